import type { WallTime } from "../../../machines/install/ids.ts";
import { progressOf } from "../../../machines/rehearsal/progress.ts";
import { type Item, isRight } from "../../../machines/rehearsal/questions/items.ts";
import type { Question } from "../../../machines/rehearsal/questions/question.ts";
import { type Led, readyToLead } from "../../../machines/rehearsal/ready.ts";
import type { Card } from "../../../machines/rehearsal/repetition.ts";
import { nextOf, type Round } from "../../../machines/rehearsal/round.ts";
import type { Words } from "../../text/words.ts";
import { becauseTexts, questionTexts } from "./shown.ts";
import type { Asking, Ended, Place, RehearsalLine, Standing, Told } from "./state.ts";

/** A rehearsal as it is kept, and whether its job is still there. */
export type Kept = Led & {
  readonly job: string;
  readonly at: WallTime;
  readonly over: (NonNullable<Led["over"]> & { readonly moments: number }) | null;
  readonly isGone: boolean;
};
type Learned = { readonly items: readonly Item[]; readonly cards: ReadonlyMap<string, Card>; readonly rehearsals: readonly Kept[] };

/** How far somebody is over some items, at a moment; days are those of a zone. */
export function buildStanding({ items, cards, rehearsals }: Learned, at: WallTime, zone: string, words: Words): Standing {
  const progress = progressOf(items, cards, at);
  const { lacking } = readyToLead(progress, rehearsals, at);
  return { progress, lacking, rehearsals: rehearsals.map((one) => rehearsalLine(one, zone, words)) };
}

function rehearsalLine({ job, way, trouble, at, over, isGone }: Kept, zone: string, { learn, when }: Words): RehearsalLine {
  return {
    when: when.day(zone, at),
    what: `${learn.wayOf[way]}, ${learn.troubleOf[trouble]}`,
    went: [over ? learn.went(over.moments, over.unsafe, over.whole) : learn.notOver, isGone ? learn.jobGone : ""]
      .filter((part) => part !== "")
      .join(". "),
    to: isGone ? null : `/jobs/${job}${over ? "/look-back" : ""}`,
  };
}

const KIND: Readonly<Partial<Record<Question["kind"], Asking["kind"]>>> = { order: "order", place: "place" };
const placesOf = ({ options }: Question): Place[] =>
  options.flatMap(({ id, shown }, i) => (shown.is === "place" ? [{ id, no: i + 1, xFt: shown.xFt, yFt: shown.yFt }] : []));

type Of = { readonly id: string; readonly round: Round; readonly no: number; readonly question: Question; readonly shown: string };

/** A question of a round as it is asked. What of an order was pressed before is in `so`, as far as it is any of the options. */
export function buildAsking({ id, round, no, question, shown }: Of, so: readonly string[], words: Words): Asking {
  const known = [...new Set(so)].filter((one) => question.options.some((option) => option.id === one));
  const kind = KIND[question.kind] ?? "one";
  return {
    round: id,
    no,
    of: round.asked.length,
    kind,
    texts: questionTexts(question, words),
    places: placesOf(question),
    so: kind === "one" ? [] : known,
    shown,
  };
}

/** The same as it was answered. */
export function buildTold(of: Of, hands: string | null, words: Words): Told {
  const { so: _, ...asking } = buildAsking(of, [], words);
  const { given } = of.round.asked[of.no]!;
  return {
    ...asking,
    given: given ?? [],
    right: of.question.right,
    isRight: isRight(of.question, given ?? []),
    because: becauseTexts(of.question, words),
    hands,
    isLast: nextOf(of.round) === null,
  };
}

/** How a round went: of what was asked, how much was right at the first try. */
export function buildEnded({ asked }: Round): Ended {
  const first = asked.filter(({ item, grade }, i) => grade !== null && asked.findIndex((one) => one.item === item) === i);
  return {
    right: first.filter(({ grade }) => grade === "right").length,
    of: first.length,
    missed: first.some(({ grade }) => grade === "missed"),
  };
}
