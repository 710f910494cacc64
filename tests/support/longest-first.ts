import { BaseSequencer, type TestSpecification } from "vitest/node";

/** Files that take half a minute or more, and folders whose files take seconds each. What is not named takes less. */
const LONGEST = [
  "/proof/middle",
  "/proof/small",
  "/browser/raise.long",
  "/browser/ear",
  "/browser/without-scripts",
  "/browser/",
  "/proof/",
  "/faults/",
  "/server/",
];

/** On a clean clone nobody has measured yet how long a file takes: a long one that begins last leaves a core idle at the end. */
export class LongestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const rank = ({ moduleId }: TestSpecification) => {
      const at = LONGEST.findIndex((part) => moduleId.includes(`/tests${part}`));
      return at < 0 ? LONGEST.length : at;
    };
    return files.sort((a, b) => rank(a) - rank(b) || a.moduleId.localeCompare(b.moduleId));
  }
}
