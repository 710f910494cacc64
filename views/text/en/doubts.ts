import type { Shortfall } from "../../../machines/install/checks/computed.ts";
import type { Unit } from "../../../machines/install/gates.ts";
import type { DoubtKind } from "../../../machines/record/doubts/doubt.ts";
import type { Finding, FindingKind, Followed } from "../../../machines/record/oversight/finding.ts";
import { fieldName } from "./changes.ts";
import { limitText, valueText } from "./limits.ts";
import { quantity } from "./names.ts";
import { duration } from "./record.ts";
import { neighborName, shortfallText } from "./worked-out.ts";

/**
 * What a finding is told with: its people by name, in the order of the record, and the question that it is about, or the call
 * where nothing is asked there; `said` is the call itself, as the guide says it.
 */
export type Told = { readonly names: readonly string[]; readonly call: string; readonly said?: string };
type Of<K extends FindingKind> = Extract<Finding, { kind: K }>;
/** The words of a kind: what the record shows, why that matters, and what would explain it innocently. None says that somebody cheated. */
type KindText<K extends FindingKind> = {
  readonly title: string;
  readonly what: (facts: Of<K>["facts"], told: Told) => string;
  readonly why: string;
  readonly innocent: string;
};

const listed = (names: readonly string[]) => (names.length < 2 ? (names[0] ?? "") : `${names.slice(0, -1).join(", ")} and ${names.at(-1)}`);
/** What the guide says at a call, inside of a sentence. */
const quoted = (said: string) => `"${said.replace(/\.$/, "")}"`;
const times = (n: number) => (n === 1 ? "once" : n === 2 ? "twice" : `${n} times`);
const people = (n: number) => (n === 1 ? "one person" : `${n} people`);
/** A number of seconds: to a tenth while they are few. */
const seconds = (s: unknown): string => (Number(s) < 60 ? `${s} s` : duration(Number(s) * 1000));
/** What was answered, before and after: a number in its unit, or a word. */
const given = (value: number | string | undefined, unit: number | string | undefined): string =>
  typeof value === "number" && unit !== undefined ? quantity(value, unit as Unit) : `"${value}"`;

/** What stood too near, by its own name, or by its kind where it has none. */
const nearName = ({ kind, id }: Shortfall): string =>
  id !== null ? `"${id}"` : kind === "ground" ? "the ground" : kind === "ticketArea" ? "the ticket's area" : neighborName(kind);

const DOUBTS: { readonly [K in DoubtKind]: KindText<K> } = {
  quickSecond: {
    title: "Second look, too quick",
    what: ({ to, seconds: s, minSeconds }, { names: [first = "", second = ""], call }) => {
      if (to === "change")
        return `${second} agreed to a change of the plan ${s} s after ${first} put it forward. Reading one takes at least ${minSeconds} s.`;
      return to === "paper"
        ? `${second} looked at the paper for "${call}" ${s} s after ${first} showed it. Looking takes at least ${minSeconds} s.`
        : `${second} gave the second answer to "${call}" ${s} s after ${first}. Reading it and looking takes at least ${minSeconds} s.`;
    },
    why: "The second person is there to catch what the first one missed. A nod catches nothing.",
    innocent: "They stood side by side and looked at the same time, with the phone ready.",
  },
  sameDevice: {
    title: "Two people, one phone",
    what: ({ count }, { names }) => `In this phase both answers came off the same phone ${times(Number(count))}: ${listed(names)}.`,
    why: "From one phone nobody can tell that two people answered.",
    innocent: "The crew had one phone with charge, and handed it over each time.",
  },
  alwaysExact: {
    title: "Every measurement dead on",
    what: ({ count }) => `All ${count} places that were measured came out exactly at the figure that was wanted.`,
    why: "Real tapes and gauges come out a little off. These may have been copied off the screen.",
    innocent: "The crew rounds to whole inches, and drives and shifts till it's right on.",
  },
  sameReading: {
    title: "Same wind, over and over",
    what: ({ mph, gustMph, count, seconds: s }) =>
      `The wind was read as ${mph} mph${gustMph === undefined ? "" : ` gusting ${gustMph}`}, ${count} times in a row over ${duration(Number(s) * 1000)}.`,
    why: "Wind never holds that still. The later ones may not have been read.",
    innocent: "They came off a weather station that updates slowly, or the meter was stuck.",
  },
  tooFastWalk: {
    title: "Walked too fast",
    what: ({ feet, people: n, seconds: s, minSeconds }, { call, said = call }) =>
      `${quoted(said)} is a walk of ${feet} ft${n === 1 ? " for one person" : ` split among ${n}`}. Flat out it takes ${seconds(minSeconds)}. There were ${seconds(s)}.`,
    why: "A stake, strap or seam that nobody walked to is one that nobody looked at.",
    innocent: "It was walked before the guide got there, and only answered then.",
  },
  tooFastDriving: {
    title: "Stakes in too fast",
    what: ({ stakes, people: n, seconds: s, minSeconds }, { call, said = call }) =>
      `${quoted(said)}: ${stakes} stakes in ${seconds(s)}. ${n} people with a driver for every two take ${seconds(minSeconds)} at the very least.`,
    why: "What isn't driven yet may have been answered as driven, and how much shows was not measured.",
    innocent: "They were in already: from another day, or from before the guide was started.",
  },
  tooFastReading: {
    title: "Answered without reading",
    what: ({ count, fastestSeconds, minSeconds }, { names }) =>
      `${listed(names)} answered or passed ${count} calls of this phase in under ${minSeconds} s each, the quickest in ${fastestSeconds} s.`,
    why: "Nobody reads or hears a call that fast, so what it asks may not have been done.",
    innocent: "The lead knows these calls by heart, and had them all done before picking up the phone.",
  },
  tooFastPhase: {
    title: "Whole phase too fast",
    what: ({ seconds: s, minSeconds, calls, people: n }) =>
      `All ${calls} calls of this phase were through in ${seconds(s)}. ${people(Number(n))} ${n === 1 ? "needs" : "need"} ${seconds(minSeconds)} at the very least.`,
    why: "The phase was answered. In that time it can't have been worked.",
    innocent: "The work was done first, and put into the guide afterward.",
  },
  outOfLimitThen: {
    title: "Bad, then good",
    what: ({ was, is, unit, name, seconds: s }, { call }) =>
      `"${call}"${name === undefined ? "" : `, ${name}`}: ${given(was, unit)} was out of limits, and ${s} s later it was ${given(is, unit)}. Nothing was done in between.`,
    why: "Nobody puts anything right in that time. The number may have changed, and not the tent.",
    innocent: "The first one was misread or a slip of the thumb, and was put right at once.",
  },
  refusedBeforeAnswer: {
    title: "Next, again and again",
    what: ({ count }, { call }) => `At "${call}" Next was pressed and refused ${times(Number(count))} before there was a good answer.`,
    why: "Somebody wanted to get past this one. Look at how it was answered in the end.",
    innocent: "They were waiting for a count or for the wind, and tried whether it would go on by itself.",
  },
  missedReadings: {
    title: "Wind not read",
    what: ({ count, due, longestSeconds, everyMin }) =>
      `While it stood, ${Number(due) === 1 ? "1 wind reading that was due was" : `${due} wind readings that were due were`} not made. ${Number(count) === 1 ? "It" : `It happened ${times(Number(count))}, and the longest`} went ${duration(Number(longestSeconds) * 1000)} without one; the weather plan says every ${everyMin} min.`,
    why: "A standing tent is only as good as whoever watches it. Wind that nobody reads clears nobody.",
    innocent: "It was read and not put in, or the tent was empty and locked.",
  },
};

function followedText(followed: Followed | null): string {
  if (followed === null) return "No other answer came.";
  const later = `${duration(followed.ms)} later`;
  const value = followed.value === null ? "" : `: ${valueText(followed.value)}`;
  switch (followed.is) {
    case "good":
      return `${later} it was good${value}.`;
    case "out":
      return `${later} it was out again${value}.`;
    case "unknown":
      return `${later} nobody knew.`;
    case "paper":
      return `${later} a paper was shown in its place.`;
    case "waived":
      return `${later} it was left out.`;
  }
}

const because = (why: string) => `Reason given: "${why}"`;

const PLAIN: { readonly [K in Exclude<FindingKind, DoubtKind>]: KindText<K> } = {
  waived: {
    title: "Left out",
    what: (facts, { names, call }) => `${listed(names)} left out "${call}". ${because(facts.because)}`,
    why: "What was left out was not looked at. The reason has to hold up later too.",
    innocent: "There is no such thing on this site, and the reason says so.",
  },
  outOfLimit: {
    title: "Out of limits",
    what: ({ value, check, followed }, { names, call }) =>
      `${listed(names)} answered "${call}": ${valueText(value)}. Good is: ${limitText({ check })}. ${followedText(followed)}`,
    why: "A bad answer is an honest one. What counts is what was done before the good one came.",
    innocent: "It was put right and measured again. That is how it should go.",
  },
  paper: {
    title: "Paper in place of a limit",
    what: ({ document, dated, seen }, { names, call }) =>
      `${listed(names)} showed paper ${document}, dated ${dated}, for "${call}". ${seen === null ? "Nobody else has looked at it." : `A second person looked at it in entry ${seen}.`}`,
    why: "The paper now stands in for the limit, so it has to be the right one: for this tent, this site and these days.",
    innocent: "An engineer or an owner wrote it for just this, and it lies with the job's papers.",
  },
  corrected: {
    title: "Opened by a correction",
    what: ({ because: reason, opened }, { names: [first = "", second = ""] }) =>
      `${first} entered ${opened.map(nearName).join(" and ")} otherwise${second === "" ? "" : `, and ${second} agreed`}. Too near before that: ${opened.map(shortfallText).join("; ")}. ${because(reason)}`,
    why: "What is moved on the plan has not moved in the ground. Nothing else opens what was worked out.",
    innocent: "It was entered wrong. Tape or locator showed where it is, and the reason says so.",
  },
  found: {
    title: "Found while working",
    what: ({ name, shuts }, { names }) =>
      `${listed(names)} told of "${name}", which nobody had entered. ${shuts.length === 0 ? "Nothing worked out was too near." : `Too near: ${shuts.map(shortfallText).join("; ")}.`}`,
    why: "Until then the tent was planned, and maybe staked, as if it was not there.",
    innocent: "No ticket names private lines, and some are only seen once the grass is cut.",
  },
  loosened: {
    title: "Limits made looser",
    what: (facts, { names }) =>
      `${listed(names)} changed the plan. Looser by it: ${facts.fields.map(fieldName).join(", ")}. ${because(facts.because)}`,
    why: "What was too much before the change may pass after it.",
    innocent: "A newer sheet or ticket came that allows it, and the change names it.",
  },
  amended: {
    title: "Plan changed",
    what: (facts, { names: [first = "", second = ""] }) =>
      `${first} put a change of the plan forward${second === "" ? "" : `, and ${second} agreed`}. ${because(facts.because)}`,
    why: "Everything from there on is measured by the new plan.",
    innocent: "The tent, the site or the crew was not what the office had been told.",
  },
  takenBack: {
    title: "Thunder taken back",
    what: (facts, { names }) => `${listed(names)} said that the thunder was none. ${because(facts.because)}`,
    why: "Work went on sooner than it would have. If it was thunder, people were in the open.",
    innocent: "It was a truck or fireworks, and others on site heard it too.",
  },
  wentBack: {
    title: "Gone back over",
    what: ({ count }, { names, call, said = call }) =>
      `${listed(names)} went back ${count === 1 ? "one call" : `${count} calls`}, to ${quoted(said)}.`,
    why: "What was answered there is asked again. Look whether the new answer is another one.",
    innocent: "A press too many, or somebody wanted to hear the call once more.",
  },
  stale: {
    title: "Too old when it was needed",
    what: ({ count }, { call }) =>
      `In this phase the answer to "${call}" was too old ${times(count)} when the work came to it. It was asked again.`,
    why: "Between the last answer and the work nobody knew how it stood.",
    innocent: "Lunch, or a call that took long. It was looked at again before anybody went on.",
  },
  clockJumped: {
    title: "Clock set",
    what: ({ is, ms }) =>
      is === "ahead"
        ? `The machine's clock went ${duration(ms)} ahead between two entries.`
        : `The machine's clock went back ${duration(ms)} between two entries${is === "back" ? "" : ", and nobody counted how long that was"}.`,
    why: "Times on the two sides of it don't fit together.",
    innocent: "The machine had been off or without signal, and set its clock right.",
  },
};

const KINDS = { ...DOUBTS, ...PLAIN } as unknown as Readonly<Record<FindingKind, KindText<FindingKind>>>;

/** Kinds of findings by name. */
export const findingTitle = (kind: FindingKind): string => KINDS[kind].title;
/** Why a kind of finding matters. */
export const findingWhy = (kind: FindingKind): string => KINDS[kind].why;
/** What would explain it, with nothing wrong. */
export const findingInnocent = (kind: FindingKind): string => KINDS[kind].innocent;
/** What the record shows, with its figures. */
export const findingWhat = ({ kind, facts }: Finding, told: Told): string => KINDS[kind].what(facts as never, told);
