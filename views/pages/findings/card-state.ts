import type { FollowUp, FollowUpState } from "../../../machines/record/follow-up.ts";
import type { Finding } from "../../../machines/record/oversight/finding.ts";
import { askText, sayText } from "../../text/replies.ts";
import type { Words } from "../../text/words.ts";
import { placeName } from "../record/lines.ts";
import type { Card, FollowUpLine } from "./state.ts";

/** A finding as it is kept, with what its words need of its job and what was said of it. */
export type Found = {
  readonly job: string;
  readonly finding: Finding;
  readonly state: FollowUpState;
  readonly title: string;
  readonly zone: string;
  /** Names by ids; who was erased is not among them. */
  readonly names: Readonly<Record<string, string>>;
  readonly followUps: readonly FollowUp[];
};
/** Letters of a device that tell it from others. */
const DEVICE_LETTERS = 8;

/** The name of a finding on a page. */
export const cardId = ({ job, kind, entry }: Pick<Card, "job" | "kind" | "entry">): string => `${job}-${kind}-${entry}`;

export function cardOf({ job, finding, state, title, zone, names, followUps }: Found, words: Words): Card {
  const { kind, entry, entries, phase, by, at, day, asks } = finding;
  const name = (id: string): string => (Object.hasOwn(names, id) ? names[id]! : id);
  const said = asks ? sayText(asks, words) : "";
  const call = (asks && askText(asks, words)) ?? said;
  const people = by.map(name);
  return {
    id: cardId({ job, kind, entry }),
    job,
    kind,
    entry,
    at: new Date(at).toISOString(),
    day,
    phase,
    people,
    title: words.findingTitle(kind),
    what: words.findingWhat(finding, { names: people, call, said }),
    call: asks && said,
    where: words.findings.whereIs(title, placeName(phase, words), words.when.second(zone, at)),
    why: words.findingWhy(kind),
    innocent: words.findingInnocent(kind),
    state,
    link: `/jobs/${job}/record#e${entry}`,
    others: entries.filter((no) => no !== entry),
    followUps: followUps.map((said) => lineOf(said, { name, zone, words })),
    crew: Object.keys(names).map((id) => ({ value: id, text: name(id) })),
  };
}

type Telling = { readonly name: (id: string) => string; readonly zone: string; readonly words: Words };

function lineOf({ no, is, text, who, at, device }: FollowUp, { name, zone, words: { findings, when } }: Telling): FollowUpLine {
  return {
    no,
    is,
    isText: findings.saidIs(is),
    text,
    who: is === "followedUp" ? findings.seenTo(who === null ? findings.office : name(who)) : null,
    on: findings.on(when.second(zone, at), device.slice(0, DEVICE_LETTERS)),
  };
}
