import { decide } from "../../machines/install/decide.ts";
import { currentStep, type Job, missingNow } from "../../machines/install/job.ts";
import type { Frozen } from "../../machines/install/step.ts";
import { Crew } from "../support/crew.ts";
import { briefOf, commandOf, frozenOf, SECOND, SMALL } from "./fixtures.ts";
import { stuck } from "./guards.ts";

/** The same tent, for a brief that asks three calls more: two papers at the start and the walls. */
const fewer = briefOf(SMALL, { use: { permit: "notRequired", fabricCertificate: "notRequired", walls: false } });
const more: Frozen = frozenOf(briefOf(SMALL));
/** Where it is amended, and what is then behind the job and has to be done there, by hand. */
const AT: readonly (readonly [call: string, added: readonly string[]])[] = [
  ["baseline", ["permit", "certificate"]],
  ["raise.C", ["permit", "certificate"]],
  ["exits", ["permit", "certificate", "walls"]],
];

/**
 * Amends a job at some calls and walks on; with one guard of the amended chart stuck, if one is named. Says what goes wrong,
 * or nothing. The exploration itself never follows an amendment.
 */
export function walkAmended(guard?: string, says?: boolean): string | null {
  for (const [call, added] of AT) {
    const crew = new Crew(fewer).goTo(call).ready();
    crew.amend(more);
    if (guard !== undefined) crew.job = onStuck(crew.job, guard, says === true);
    const trouble = walk(crew, call, added);
    if (trouble) return `amended at ${call}: ${trouble}`;
  }
  return null;
}

const onStuck = (job: Job, guard: string, says: boolean): Job => {
  const machine = stuck(job.machine, guard, says);
  return { ...job, machine, snapshot: machine.resolveState({ value: job.snapshot.value, context: job.snapshot.context }) };
};

function walk(crew: Crew, call: string, added: readonly string[]): string | null {
  for (const id of added) {
    for (let n = 0; crew.call !== id; n++) {
      if (n > 20) return `never came to ${id}`;
      crew.oneMore();
      if (crew.call !== id && crew.call !== call && !added.includes(crew.call)) return `${crew.call} came before ${id}`;
    }
    const back = tried(crew, { type: "back" });
    if (!("refused" in back) || back.refused[0]?.why !== "nothingBefore") return `back led away from ${id}`;
    const early = tried(crew, { type: "next" });
    if (crew.missing !== null && "did" in early) return `${id} was passed unanswered`;
  }
  for (let n = 0; crew.call !== call; n++) {
    if (n > 20) return `never came back to ${call}`;
    crew.oneMore();
  }
  return missingNow(crew.job, crew.at) === null || currentStep(crew.job)?.id === call ? null : "something is missing";
}

/** What would come of a command. */
const tried = (crew: Crew, ask: { type: "back" | "next" }) =>
  decide(crew.job, commandOf(ask, crew.at + SECOND, crew.entry, crew.revision, "lead"))[1];
