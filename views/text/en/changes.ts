import type { Change } from "../../../machines/install/changes.ts";
import type { SiteChange } from "../../../machines/install/site-changes.ts";
import { own } from "../../../machines/lookup/own.ts";
import type { Point } from "../../../machines/tent/types.ts";
import { anchors } from "./anchors.ts";
import { choices, fields } from "./brief.ts";
import { feetInches, inches, kitName, utilityName } from "./names.ts";
import { roleName } from "./roles.ts";
import { weatherPlan } from "./weather-plan.ts";
import { when } from "./when.ts";
import { neighborName, placesText } from "./worked-out.ts";

/** What a change is told with: people by name, times in the zone of the site. */
export type Teller = { readonly name: (id: string) => string; readonly zone: string };

/** One thing that a changed plan changes, in a sentence. */
export function changeText(change: Change, { name, zone }: Teller): string {
  switch (change.what) {
    case "rings":
      return `${change.edge}: ${change.to} rings, not ${change.from}.`;
    case "pole":
      return change.more
        ? `One more ${POLE[change.kind]}, ${change.id}, ${placeText(change.at)}.`
        : `One ${POLE[change.kind]} less: none ${placeText(change.at)}.`;
    case "corner":
      return `Corner ${change.corner}: ${shiftText(change.by)}.`;
    case "kit":
      return `${capital(kitName(change.item))}: ${change.to}, not ${change.from}.`;
    case "person":
      return personText(name(change.id), change.from && roleName(change.from), change.to && roleName(change.to));
    case "site":
      return siteChangeText(change.change);
    case "pulls":
      return `${change.looser ? loosened("anchorage.pulls") : ""}${anchors.pullsChanged(change.from, change.to)}`;
    case "fact":
      return `${change.looser ? loosened(change.field) : ""}${fieldName(change.field)}: ${factText(change.field, change.to, zone)}${change.from === null ? "" : `; was ${factText(change.field, change.from, zone)}`}.`;
  }
}

const AREAS = { ground: "The usable ground", ticketArea: "The area that the ticket names", slope: "The slope" } as const;
const HOW = { added: "added", gone: "taken out", moved: "moved", changed: "changed" } as const;

/** What a changed site changes; what is kept less clear of comes with that in front. */
function siteChangeText(change: SiteChange): string {
  const looser = "looser" in change ? "LOOSER ON CLEARANCE. " : "";
  switch (change.what) {
    case "neighbor":
      return `${looser}${capital(neighborName(change.kind))} "${change.id}": ${HOW[change.how]}.`;
    case "area":
      return `${looser}${AREAS[change.which]}: ${HOW[change.how]}.`;
    case "place":
      return `The tent: corner A ${moveText(change.byFt)}, A–B ${turnText(change.turnedDeg)}.`;
    case "slide":
      return `Plates at ${change.station} slide ${feetInches(Math.abs(change.byFt))} ${change.byFt < 0 ? "counterclockwise" : "clockwise"} along the edge.`;
    case "anchor":
      return `${looser}${placesText([change.stake], 1)}: ${change.how === "gone" ? "a stake again, no engineer's anchor" : "an engineer's anchor in place of the stake"}.`;
  }
}
const moveText = (byFt: number) => (byFt === 0 ? "stays" : `moves by ${feetInches(byFt)}`);
const turnText = (deg: number) =>
  deg === 0 ? "is not turned" : `turns by ${Math.abs(Math.round(deg * 10) / 10)}° ${deg < 0 ? "counterclockwise" : "clockwise"}`;

const POLE = { center: "center pole", quarter: "quarter pole" } as const;

function personText(who: string, was: string | null, is: string | null): string {
  if (is === null) return `${who} leaves the job.`;
  return was === null ? `${who} joins, as ${is}.` : `${who}: ${is}, not ${was}.`;
}

/** Where something stands, from corner A: along the baseline, and across from it. */
export const placeText = ({ xFt, yFt }: Point): string => `${feetInches(yFt)} along from A and ${feetInches(xFt)} across`;

/** How far a corner mark moves, by the ways a crew stands to it. */
export function shiftText({ xFt, yFt }: Point): string {
  const [across, along] = [xFt, yFt].map((ft) => inches(Math.abs(ft) * 12));
  const parts = [
    Math.abs(xFt) < 1e-4 ? null : `${across} ${xFt > 0 ? "away from" : "toward"} the A–B side`,
    Math.abs(yFt) < 1e-4 ? null : `${along} ${yFt > 0 ? "toward" : "away from"} the B–C end`,
  ];
  return parts.filter((p) => p !== null).join(" and ");
}

const OTHER_FIELDS: Readonly<Record<string, string>> = {
  "site.overheadKv": fields["site.overhead"]?.label ?? "",
  "siteModel.buried": "Buried lines",
  "siteModel.overhead": "Overhead lines",
  "siteModel.things": "What stands there",
  "siteModel.ground": "Usable ground",
  "siteModel.ticketArea": "The ticket's area",
  "siteModel.fixes": "Stakes replaced",
  "tent.ridge.kind": "Center poles",
  "tent.ridge.count": "Center poles along the ridge",
  "tent.ridge.fromNearEndFt": "Center poles, ft from the near end",
};
const STATION: Readonly<Record<string, string>> = { corner: "a corner", seamEnd: "a seam end", side: "a side pole" };

export function fieldName(field: string): string {
  const known = fields[field]?.label ?? OTHER_FIELDS[field] ?? weatherPlan.field(field) ?? anchors.field(field);
  if (known) return known;
  const [group, first = "", second = ""] = field.split(".");
  if (group === "ticket") return capital(utilityName(second));
  if (group === "kit") return `${capital(kitName(first))}, ${second === "spare" ? "spares" : "weight each"}`;
  if (group === "tent" && first === "anchors")
    return `${capital(field.split(".")[3] ?? "plates and stakes")} at ${STATION[second] ?? second}`;
  return field;
}

function factText(field: string, fact: string | number | boolean | null, zone: string): string {
  if (field.startsWith("ticket.utilities"))
    return fact === null ? "not on the ticket" : fact === true ? "marked" : fact === false ? "nothing here" : "no answer yet";
  if (fact === null || fact === "") return "not given";
  if (field === "ticket.validFrom" || field === "ticket.validTo") return when.moment(zone, Number(fact));
  if (/^forecast\.(?:from|to|readAt|clearBy)$/.test(field)) return when.moment(zone, Number(fact));
  if (field.startsWith("weatherPlan.")) return own(weatherPlan.choices(field), String(fact))?.replace(/\.$/, "") ?? String(fact);
  if (field.startsWith("anchorage.")) return anchors.value(field, fact);
  if (typeof fact === "boolean") return fact ? "yes" : "no";
  if (field.endsWith(".spare")) return `${Math.round(Number(fact) * 1000) / 10}%`;
  if (field.endsWith(".unitLb")) return `${fact} lb`;
  return choices[String(fact)] ?? String(fact);
}

const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

/** What a changed plan changes, and what it opens again. */
export const changes = {
  what: "What changes",
  nothing: "Nothing changes.",
  some: (texts: readonly string[], most: number) =>
    texts.length <= most ? texts.join(" ") : `${texts.slice(0, most).join(" ")} And ${texts.length - most} more.`,
  again: (n: number) => (n === 1 ? "1 answer is asked again" : `${n} answers are asked again`),
  added: (n: number) => (n === 1 ? "1 call is added, to be done now" : `${n} calls are added, to be done now`),
  noneAgain: "No answer is asked again.",
  goesOn: (call: string) => `The guide goes on at: ${call}`,
} as const;

/** What cloth or site says otherwise than the plan: the page that puts it forward. */
export const discrepancy = {
  title: "Cloth or site says otherwise",
  intro: "Say what was found. A second person looks at the change and agrees, or not.",
  rings: "Rings counted along an edge",
  readAs: (edge: string, rings: number) => `${edge} has ${rings} rings in the plan.`,
  edge: "Edge",
  counted: "Rings counted, both corners included",
  more: "One more pole",
  kind: "Kind",
  quarter: "quarter pole",
  center: "center pole",
  along: "Along from A, ft",
  across: "Across from the A–B side, ft",
  fewer: "One pole less",
  whichPole: "Which one",
  pole: (id: string, at: Point) => `${id}: ${placeText(at)}`,
  corner: "A corner stands elsewhere",
  whichCorner: "Corner",
  away: "Away from the A–B side, in (minus: toward it)",
  toward: "Toward the B–C end, in (minus: away from it)",
  because: "Why: what did you see?",
  look: "Show what changes",
  versions: "Every version of the plan stays in the record.",
  put: "Put it to a second person",
  change: "Say it differently",
  else: "Change something else in the plan",
} as const;

/** A limit, or something that is checked no longer. */
const loosened = (field: string): string =>
  field.startsWith("use.") ? "LESS IS CHECKED. " : field.startsWith("anchorage.") ? "LOOSER ON ANCHORS. " : "LOOSER LIMIT. ";
