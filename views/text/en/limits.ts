import type { Gate, Source, Unit, Value } from "../../../machines/install/gates.ts";
import { LENGTHS, lengthFt } from "../../../machines/site/lengths.ts";
import { toleranceIn } from "../../../machines/site/squaring.ts";
import { feetInches, inches, things } from "./names.ts";

/** A quantity as a crew says it. */
export function quantity(n: number, unit: Unit): string {
  switch (unit) {
    case "in":
      return inches(n);
    case "ft":
      return feetInches(n);
    case "deg":
      return `${Math.round(n * 10) / 10}°`;
    case "lbf":
      return `${n} lb`;
    case "turns":
      return `${n} turns`;
  }
}

/** What a gate takes as good. */
export function limitText({ check }: Gate): string {
  switch (check.kind) {
    case "yesNo":
      return check.good ? "yes" : "no";
    case "count":
      if (check.to === check.from) return check.to === 0 ? "none" : `exactly ${check.from}`;
      return check.to === null ? `${check.from} or more` : `${check.from} to ${check.to}`;
    case "sameCount":
      return "as many as went in";
    case "measure": {
      const none = check.noneIsGood ? ", or none" : "";
      if (check.unit === "deg" && check.from !== null && check.to !== null) return leanText(check.from, check.to);
      if (check.unit === "ft" && check.from === 0 && check.to !== null) return `at most ${feetInches(check.to)}${none}`;
      if (check.from === null) return `${quantity(check.to ?? 0, check.unit)} or less${none}`;
      return check.to === null
        ? `${quantity(check.from, check.unit)} or more${none}`
        : `${quantity(check.from, check.unit)} to ${quantity(check.to, check.unit)}${none}`;
    }
    case "square":
      return LENGTHS.map((name) => wantedLength(name, lengthFt(check.want, name), check.inPer50Ft)).join(", ");
    case "counts":
      return Object.entries(check.want)
        .map(([item, n]) => things(n, item))
        .join(", ");
    case "document":
      return check.expected ?? "its number";
    case "wind":
      return "a fresh, workable wind reading";
    case "paperOnly":
      return "a paper only";
  }
}

const wantedLength = (name: string, ft: number, inPer50Ft: number) =>
  `${name} ${feetInches(ft)} within ${inches(toleranceIn(ft, inPer50Ft))}`;

/** Off plumb: away from the tent is plus, and toward it is minus. */
function leanText(from: number, to: number): string {
  if (from === -to) return `within ${quantity(to, "deg")} of plumb`;
  if (from === 0) return `no more than ${quantity(to, "deg")} and not toward the tent`;
  return from > 0
    ? `${quantity(from, "deg")} to ${quantity(to, "deg")} away from the tent`
    : `${quantity(from, "deg")} to ${quantity(to, "deg")}`;
}

/** An answer as it was given. */
export function valueText(value: Value): string {
  switch (value.kind) {
    case "yesNo":
      return value.yes ? "Yes" : "No";
    case "count":
      return String(value.n);
    case "measure":
      return quantity(value.n, value.unit);
    case "none":
      return "None here";
    case "unknown":
      return "Don't know";
    case "lengths":
      return Object.entries(value.ft)
        .map(([name, ft]) => `${name} ${feetInches(ft)}`)
        .join(", ");
    case "counts":
      return Object.entries(value.n)
        .map(([item, n]) => things(n, item))
        .join(", ");
    case "document":
      return value.named;
    case "paper":
      return `Paper ${value.document} from ${value.by}`;
  }
}

const SOURCES: Readonly<Record<Extract<Source, string>, string>> = {
  "common practice, no source": "common practice, no source",
  "from memory": "from memory",
  "this tent's sheet": "this tent's sheet",
  "this job's brief": "this job's brief",
};
/** A published title stays in the language that it was published in. */
export const sourceText = (source: Source): string => (typeof source === "string" ? SOURCES[source] : `${source.title}, ${source.section}`);
