import { Temporal } from "temporal-polyfill";
import type { Role } from "./brief.ts";
import type { PaperValue } from "./checks/common-values.ts";
import type { Value } from "./checks/registry.ts";
import { type Answer, COMPETENT } from "./gates.ts";
import type { DeviceId, GateId, PersonId, WallTime } from "./ids.ts";
import { foldName } from "./person-name.ts";
import type { Refusal } from "./refusals.ts";

/** An answer as somebody gives it. */
export type Given = {
  readonly gate: GateId;
  readonly value: Value;
  readonly by: PersonId;
  readonly device: DeviceId;
  readonly role: Role;
};
type Answers = Readonly<Record<GateId, Answer>>;

/** The paper that an answer is a look at: the same one, shown at this gate, that nobody else has seen yet. */
function shownBefore(answers: Answers, { gate, value }: Given): Answer | null {
  const shown = Object.hasOwn(answers, gate) ? answers[gate] : undefined;
  if (value.kind !== "paper" || shown?.value.kind !== "paper" || shown.seen) return null;
  return samePaper(shown.value, value) ? shown : null;
}

const samePaper = (a: PaperValue, b: PaperValue): boolean =>
  foldName(a.by) === foldName(b.by) && foldName(a.document) === foldName(b.document) && a.dated === b.dated;

/** Whether an answer is a second person's look at the paper that was shown. */
export const isSecondLook = (answers: Answers, given: Given): boolean => shownBefore(answers, given) !== null;

/**
 * Why somebody may not show a paper, or not be the second to look at it; `null` where they may. A paper stands in for a limit
 * that a life can hang on: two competent people have it before them, each on a phone of their own.
 */
export function paperRefusal(answers: Answers, given: Given): Refusal | null {
  if (given.value.kind !== "paper") return null;
  if (!COMPETENT.includes(given.role)) return { why: "role", is: given.role, may: COMPETENT };
  const shown = shownBefore(answers, given);
  if (shown?.by === given.by) return { why: "ownPaper" };
  return shown?.device === given.device ? { why: "ownPhone" } : null;
}

/** Whether a paper is dated after the day that it is at the site. */
export const isDatedAhead = ({ dated }: PaperValue, zone: string, wall: WallTime): boolean =>
  dated > Temporal.Instant.fromEpochMilliseconds(wall).toZonedDateTimeISO(zone).toPlainDate().toString();
