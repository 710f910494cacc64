import type { Check, Value } from "../../machines/install/checks/registry.ts";
import { LENGTHS, lengthFt, type Marks } from "../../machines/site/lengths.ts";

/** Truthful answers to one kind of check, written by hand: in order, and not in order. `null` where only a paper or a reading opens it. */
type Answers<C> = { readonly good: ((check: C) => Value) | null; readonly bad: ((check: C) => Value) | null };

const tapedFt = (marks: Marks) => Object.fromEntries(LENGTHS.map((name) => [name, lengthFt(marks, name)]));

/** How many go under, and come out again. */
const UNDER = 3;

const ANSWERS: { readonly [K in Check["kind"]]: Answers<Extract<Check, { kind: K }>> } = {
  yesNo: { good: ({ good }) => ({ kind: "yesNo", yes: good }), bad: ({ good }) => ({ kind: "yesNo", yes: !good }) },
  count: {
    good: ({ from, to }) => ({ kind: "count", n: to !== null && to !== from ? Math.min(UNDER, to) : from }),
    bad: ({ from, to }) => ({ kind: "count", n: to === null ? from - 1 : to + 1 }),
  },
  sameCount: { good: () => ({ kind: "count", n: UNDER }), bad: () => ({ kind: "count", n: UNDER - 1 }) },
  measure: {
    good: ({ unit, from, to }) => ({ kind: "measure", unit, n: from === null ? to! : to === null ? from : (from + to) / 2 }),
    bad: ({ unit, from, to }) => ({ kind: "measure", unit, n: to === null ? from! - 0.5 : to + 0.5 }),
  },
  lengths: {
    good: ({ want }) => ({ kind: "lengths", ft: tapedFt(want) }),
    bad: ({ want }) => ({ kind: "lengths", ft: tapedFt({ ...want, C: { ...want.C, yFt: want.C.yFt - 1 } }) }),
  },
  counts: {
    good: ({ want }) => ({ kind: "counts", n: want }),
    bad: ({ want }) => ({ kind: "counts", n: Object.fromEntries(Object.entries(want).map(([item, n], i) => [item, i === 0 ? n - 1 : n])) }),
  },
  document: {
    good: ({ expected }) => ({ kind: "document", named: expected ?? "PN-77" }),
    bad: ({ expected }) => ({ kind: "document", named: expected === null ? " " : "another one" }),
  },
  wind: { good: null, bad: null },
  quiet: { good: null, bad: null },
  figures: {
    good: ({ unit, names, want }) => ({
      kind: "figures",
      unit,
      n: Object.fromEntries(names.map((name) => [name, want[name]!.from ?? want[name]!.to ?? 0])),
    }),
    bad: ({ unit, want }) => ({
      kind: "figures",
      unit,
      n: Object.fromEntries(
        Object.entries(want).map(([name, { from, to }], i) => [name, i > 0 ? (from ?? to ?? 0) : to === null ? from! - 1 : to + 1]),
      ),
    }),
  },
  each: {
    good: ({ names }) => ({ kind: "each", yes: Object.fromEntries(names.map((name) => [name, true])) }),
    bad: ({ names }) => ({ kind: "each", yes: Object.fromEntries(names.map((name, i) => [name, i > 0])) }),
  },
  paperOnly: { good: null, bad: null },
  notKnown: { good: null, bad: null },
  computed: { good: null, bad: null },
};

const answersTo = ({ kind }: Check) => ANSWERS[kind] as Answers<Check>;

/** A paper of somebody who is not of the crew: it counts once a second person has seen it. */
export const PAPER: Value = { kind: "paper", by: "A. Engineer", document: "ENG-1204", dated: "2026-05-28" };

/** A truthful answer to a check that is in order: a paper where nothing else is one. */
export const goodValue = (check: Check): Value => answersTo(check).good?.(check) ?? PAPER;

/** A truthful answer to a check that is not in order. */
export const badValue = (check: Check): Value => answersTo(check).bad?.(check) ?? { ...PAPER, document: " " };

/** An answer of a kind that the check does not take. */
export const oddValue = ({ kind }: Check): Value =>
  kind === "yesNo" ? { kind: "measure", n: 3, unit: "turns" } : { kind: "yesNo", yes: true };
