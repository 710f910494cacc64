import type { Check, Finding, Value } from "../../../machines/install/checks/registry.ts";
import { DEFAULTS } from "../../../machines/install/limits.ts";
import { LENGTHS, lengthFt } from "../../../machines/site/lengths.ts";
import { toleranceIn } from "../../../machines/site/squaring.ts";
import { factName } from "./facts.ts";
import { feetInches, kitName, partName, quantity, things, tolerance } from "./names.ts";
import { squaredText } from "./squaring.ts";
import { shortfallText } from "./worked-out.ts";

type CheckOf<K> = Extract<Check, { kind: K }>;
type FindingOf<K> = Extract<Finding, { kind: K }>;
type ValueOf<K> = Extract<Value, { kind: K }>;

/** The words of a kind of check: what it takes as good and, where an answer comes to more than its value, what that is. */
type CheckText<K> = { readonly limit: (check: CheckOf<K>) => string } & ([FindingOf<K>] extends [never]
  ? unknown
  : { readonly found: (finding: FindingOf<K>) => string });

/** Every kind of check, in words. */
export const CHECK_TEXT: { readonly [K in Check["kind"]]: CheckText<K> } = {
  yesNo: { limit: ({ good }) => (good ? "yes" : "no") },
  count: {
    limit: ({ from, to }) => (to !== null && to < from ? "more people on the crew" : rangeText("count", from, to)),
  },
  sameCount: { limit: () => "as many as went in" },
  measure: {
    limit: ({ unit, from, to, noneIsGood }) => `${rangeText(unit, from, to)}${noneIsGood ? ", or none" : ""}`,
  },
  lengths: {
    limit: ({ want, inPer50Ft }) => LENGTHS.map((name) => wantedLength(name, lengthFt(want, name), inPer50Ft)).join(", "),
    found: ({ squared }) => squaredText(squared),
  },
  counts: { limit: ({ want }) => thingsText(want), found: countedText },
  figures: { limit: eachLimit, found: figuresText },
  each: { limit: ({ names }) => `a yes for ${listed(names.map(partName))}`, found: eachText },
  document: { limit: ({ expected }) => expected ?? "its number" },
  wind: { limit: ({ belowMph }) => `a fresh reading, gusts under ${belowMph} mph` },
  quiet: { limit: () => `${DEFAULTS.thunderS.is / 60} minutes without thunder or lightning` },
  paperOnly: { limit: () => "a paper only" },
  notKnown: { limit: ({ facts }) => `${facts.map(factName).join(" and ")}, filled in and agreed to` },
  computed: { limit: ({ short }) => short.map(shortfallText).join("; ") },
};

/** Every kind of value, as it was given. */
export const VALUE_TEXT: { readonly [K in Value["kind"]]: (value: ValueOf<K>) => string } = {
  yesNo: ({ yes }) => (yes ? "Yes" : "No"),
  count: ({ n }) => String(n),
  measure: ({ n, unit }) => quantity(n, unit),
  none: () => "None here",
  unknown: () => "Don't know",
  lengths: ({ ft }) =>
    Object.entries(ft)
      .map(([name, n]) => `${name} ${feetInches(n)}`)
      .join(", "),
  counts: ({ n }) => thingsText(n),
  figures: ({ unit, n }) =>
    Object.entries(n)
      .map(([name, figure]) => `${partName(name)} ${figureText(figure, unit)}`)
      .join(", "),
  each: ({ yes }) =>
    Object.entries(yes)
      .map(([name, is]) => `${partName(name)} ${is ? "yes" : "no"}`)
      .join(", "),
  document: ({ named }) => named,
  paper: ({ document, by, dated }) => `Paper ${document} from ${by}, dated ${dated}`,
};

const wantedLength = (name: string, ft: number, inPer50Ft: number) =>
  `${name} ${feetInches(ft)} within ${tolerance(toleranceIn(ft, inPer50Ft))}`;

const thingsText = (counts: Readonly<Record<string, number>>) =>
  Object.entries(counts)
    .map(([item, n]) => things(n, item))
    .join(", ");

type FigureUnit = CheckOf<"figures">["unit"];
/** A count or a measurement. */
export const figureText = (n: number, unit: FigureUnit): string => (unit === "count" ? String(n) : quantity(n, unit));

/** One limit, from the least to the most that is good. Nothing at all goes without saying, and so does the least wind. */
function rangeText(unit: FigureUnit, from: number | null, to: number | null): string {
  if (unit === "count" && from === to) return to === 0 ? "none" : `exactly ${from}`;
  if (unit === "count" && from !== null && to !== null) return `${from} to ${to}`;
  if (unit === "deg" && from !== null && to !== null) return leanText(from, to);
  if (to === null) return `${figureText(from ?? 0, unit)} or more`;
  return from === null || from <= (unit === "mph" ? 1 : 0)
    ? `at most ${figureText(to, unit)}`
    : `${figureText(from, unit)} to ${figureText(to, unit)}`;
}

/** Every name with its limit; names that have the same one together. */
function eachLimit({ unit, names, want }: CheckOf<"figures">): string {
  const alike = new Map<string, string[]>();
  for (const name of names) {
    const { from, to } = want[name]!;
    const limit = rangeText(unit, from, to);
    alike.set(limit, [...(alike.get(limit) ?? []), partName(name)]);
  }
  if (alike.size === 1 && names.length > 1) return [...alike.keys()].map((limit) => `each ${limit}`).join("");
  return [...alike].map(([limit, of]) => `${listed(of)} ${limit}`).join("; ");
}

/** What is off its limit, then what is still to give. Of pulls that are all made the lowest is told, as it is what counts. */
function figuresText({ unit, missing, off, held }: FindingOf<"figures">): string {
  const lowest = off.toSorted((one, other) => one.n - other.n)[0];
  if (held && lowest) return all(`${partName(lowest.name)} ${figureText(lowest.n, unit)}: ${heldText(held)}`, missing, "Still to give");
  const bad = off.map(({ name, n, limit }) => `${partName(name)} ${figureText(n, unit)}: want ${rangeText(unit, limit.from, limit.to)}`);
  return all(bad.join("; "), missing, "Still to give");
}

/** What pulls that were too low come to, and what more stakes at that plate would do; without the period at its end. */
function heldText({ safeLbf, demandLbf, stakes, wanted, allowed }: NonNullable<FindingOf<"figures">["held"]>): string {
  // To the nearest pound, and never up to what it is short of.
  const wholeLbf = Math.round(safeLbf) < demandLbf ? Math.round(safeLbf) : Math.floor(safeLbf);
  const counts = `a stake counts for ${wholeLbf}, against ${demandLbf}`;
  if (wanted === null) return counts;
  if (allowed !== null && allowed < wanted) return `${counts}. It takes ${wanted} stakes; the sheet allows ${Math.max(allowed, stakes)}`;
  if (allowed !== null) return `${counts}. ${wanted} stakes at that plate are what it takes; the sheet allows ${allowed}`;
  return `${counts}. ${wanted === 3 && stakes === 2 ? "A third stake only if the sheet allows it" : `${wanted} stakes only if the sheet allows them`}`;
}

/** Who said no, then who is still to ask. */
function eachText({ missing, no }: FindingOf<"each">): string {
  return all(no.length === 0 ? "" : `Still a no: ${listed(no.map(partName))}`, missing, "Still to answer");
}

function all(bad: string, missing: readonly string[], still: string): string {
  const left = missing.length === 0 ? "" : `${still}: ${missing.map(partName).join(", ")}.`;
  return bad === "" ? left || "That's all of them." : `${capital(bad)}. ${left}`.trim();
}

const listed = (names: readonly string[]) => (names.length < 2 ? (names[0] ?? "") : `${names.slice(0, -1).join(", ")} and ${names.at(-1)}`);

/** Off plumb: away from the tent is plus, and toward it is minus. */
function leanText(from: number, to: number): string {
  if (from === -to) return `within ${quantity(to, "deg")} of plumb`;
  if (from === 0) return `no more than ${quantity(to, "deg")} and not toward the tent`;
  return from > 0
    ? `${quantity(from, "deg")} to ${quantity(to, "deg")} away from the tent`
    : `${quantity(from, "deg")} to ${quantity(to, "deg")}`;
}

/** What is left to count, what is short and what is over. */
function countedText({ missing, off }: FindingOf<"counts">): string {
  const still = missing.length === 0 ? "" : `Still to count: ${few(missing.map(kitName))}.`;
  const texts = off.map(({ item, n, wanted }) =>
    n < wanted ? `${things(wanted - n, item)} short of ${wanted}` : `${things(n - wanted, item)} over ${wanted}`,
  );
  if (texts.length > 0) return `${capital(few(texts))}. ${still}`.trim();
  return still || "All there.";
}

/** The list itself stands on the truck's page: spoken, its first lines are enough. */
const MAX_NAMED = 2;
const few = (names: readonly string[]) =>
  names.length <= MAX_NAMED + 1 ? names.join(", ") : `${names.slice(0, MAX_NAMED).join(", ")} and ${names.length - MAX_NAMED} more`;

const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);
