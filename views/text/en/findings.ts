import type { Discrepant, Finding } from "../../../machines/conversation/finding.ts";
import { kitName, things } from "./names.ts";
import { squaredText } from "./squaring.ts";

/** What an answer comes to: which mark to move, what is short. */
export const findingText = (finding: Finding): string =>
  finding.of === "lengths" ? squaredText(finding.squared) : countedText(finding.missing, finding.off);

/** What is left to count, what is short and what is over. */
function countedText(missing: readonly string[], off: readonly Discrepant[]): string {
  const still = missing.length === 0 ? "" : `Still to count: ${missing.map(kitName).join(", ")}.`;
  if (off.length === 0) return still || "All there.";
  const texts = off.map(({ item, by, wanted }) =>
    by < 0 ? `${things(-by, item)} short of ${wanted}` : `${things(by, item)} over ${wanted}`,
  );
  return `${capital(texts.join("; "))}. ${still}`.trim();
}

const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);
