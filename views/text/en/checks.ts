import type { Check, Finding, Value } from "../../../machines/install/checks/registry.ts";
import { LENGTHS, lengthFt } from "../../../machines/site/lengths.ts";
import { toleranceIn } from "../../../machines/site/squaring.ts";
import { feetInches, inches, kitName, quantity, things } from "./names.ts";
import { squaredText } from "./squaring.ts";

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
    limit: ({ from, to }) => {
      if (to === from) return to === 0 ? "none" : `exactly ${from}`;
      return to === null ? `${from} or more` : `${from} to ${to}`;
    },
  },
  sameCount: { limit: () => "as many as went in" },
  measure: {
    limit: ({ unit, from, to, noneIsGood }) => {
      const none = noneIsGood ? ", or none" : "";
      if (unit === "deg" && from !== null && to !== null) return leanText(from, to);
      if (unit === "ft" && from === 0 && to !== null) return `at most ${feetInches(to)}${none}`;
      if (from === null) return `${quantity(to ?? 0, unit)} or less${none}`;
      return to === null ? `${quantity(from, unit)} or more${none}` : `${quantity(from, unit)} to ${quantity(to, unit)}${none}`;
    },
  },
  lengths: {
    limit: ({ want, inPer50Ft }) => LENGTHS.map((name) => wantedLength(name, lengthFt(want, name), inPer50Ft)).join(", "),
    found: ({ squared }) => squaredText(squared),
  },
  counts: { limit: ({ want }) => thingsText(want), found: countedText },
  document: { limit: ({ expected }) => expected ?? "its number" },
  wind: { limit: () => "a fresh, workable wind reading" },
  paperOnly: { limit: () => "a paper only" },
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
  document: ({ named }) => named,
  paper: ({ document, by }) => `Paper ${document} from ${by}`,
};

const wantedLength = (name: string, ft: number, inPer50Ft: number) =>
  `${name} ${feetInches(ft)} within ${inches(toleranceIn(ft, inPer50Ft))}`;

const thingsText = (counts: Readonly<Record<string, number>>) =>
  Object.entries(counts)
    .map(([item, n]) => things(n, item))
    .join(", ");

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
  const still = missing.length === 0 ? "" : `Still to count: ${missing.map(kitName).join(", ")}.`;
  const texts = off.map(({ item, n, wanted }) =>
    n < wanted ? `${things(wanted - n, item)} short of ${wanted}` : `${things(n - wanted, item)} over ${wanted}`,
  );
  if (texts.length > 0) return `${capital(texts.join("; "))}. ${still}`.trim();
  return still || "All there.";
}

const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);
