import { anchorsAt } from "../tent/anchors.ts";
import type { Brief, Sheet, Ticket } from "./brief.ts";
import { isPaperNumber } from "./checks/paper-form.ts";
import { SHEET } from "./gates.ts";
import type { Limits } from "./limits.ts";
import { looserAnchorage } from "./looser-anchorage.ts";
import { looserWatch } from "./looser-watch.ts";
import { type ListedLine, overheadLinesOf } from "./overhead-lines.ts";
import { foldName } from "./person-name.ts";
import type { Refusal } from "./refusals.ts";
import type { Frozen } from "./step.ts";

/** What a change makes looser, by its field in the brief, and the paper whose new number it takes; `null` where no paper governs it, such as how many come. */
export type Looser = { readonly field: string; readonly paper: Paper | null };
/** Only a line's owner may allow less clearance: their paper opens its call, and no change does. */
type Paper = "sheet" | "ticket" | "lineOwner";
type Way = (from: number, to: number) => boolean;
type NumberKey<T> = { readonly [K in keyof T]: T[K] extends number | null ? K : never }[keyof T];

const less: Way = (from, to) => to < from;
const more: Way = (from, to) => to > from;

/** Figures that the sheet alone gives, and which way they get looser. */
const FIGURES: readonly (readonly [NumberKey<Sheet>, Way])[] = [
  ["stakeDiameterIn", less],
  ["stakeLengthIn", less],
];

/** Limits that the sheet gives or, where it is silent, a default, and which way they get looser. */
const LIMITS = [
  ["raiseGustMph", more],
  ["stopGustMph", more],
  ["insideGustMph", more],
  ["squareInPer50Ft", more],
  ["sidePoleLeanDeg", more],
] as const satisfies readonly (readonly [keyof Limits & keyof Sheet, Way])[];

/**
 * Everything that a change makes looser. Limits are those that both were frozen with, so that a record replays alike under
 * later defaults; one that the sheet gives neither before nor after is no change of the sheet's.
 */
export function looserIn(from: Frozen, to: Frozen): Looser[] {
  const [was, is] = [from.brief, to.brief];
  const bySheet = (key: keyof Limits) => was.sheet !== null && [from, to].some(({ limits }) => limits[key].source === SHEET);
  const sheet = [
    // Where nobody had the sheet all was shut, and nothing is looser than that.
    ...(was.sheet && is.sheet ? looserStakes(was.sheet, is.sheet) : []),
    ...stakeShows(from, to, bySheet("maxShowingIn")),
    ...(bySheet("stakeLeanDeg") ? leansFurther(from.limits.stakeLeanDeg.is, to.limits.stakeLeanDeg.is) : []),
    ...LIMITS.flatMap(([key, looser]) => (bySheet(key) && looser(from.limits[key].is, to.limits[key].is) ? [`sheet.${key}`] : [])),
    ...fewerAnchors(from, to),
    // A steeper strap pulls its stake out sooner.
    ...(to.plan.spec.setbackFt < from.plan.spec.setbackFt ? ["tent.setbackFt"] : []),
    ...(was.sheet && is.sheet ? looserHold(was.sheet, is.sheet) : []),
    ...(!was.site.soilKnown && is.site.soilKnown ? ["site.soilKnown"] : []),
  ];
  return [
    ...[...new Set(sheet)].map((field): Looser => ({ field, paper: "sheet" })),
    ...(was.ticket && is.ticket ? ticketSaysLess(was.ticket, is.ticket) : []).map(
      (field): Looser => ({ field: `ticket.${field}`, paper: "ticket" }),
    ),
    ...looserOverhead(from, to),
    ...looserWatch(was, is).map((field): Looser => ({ field, paper: null })),
    ...looserAnchorage(was, is).map((field): Looser => ({ field, paper: null })),
    ...opensWithLess(was.use, is.use).map((field): Looser => ({ field: `use.${field}`, paper: null })),
  ];
}

function looserStakes(was: Sheet, is: Sheet): string[] {
  return [
    ...FIGURES.flatMap(([key, looser]) => (looser(was[key]!, is[key]!) ? [`sheet.${key}`] : [])),
    // Another stake or other ground is another anchorage, whatever the figures.
    ...(["stakeKind", "soil"] as const).flatMap((key) => (is[key] === was[key] ? [] : [`sheet.${key}`])),
  ];
}

function looserHold(was: Sheet, is: Sheet): string[] {
  return [
    ...(pullOf(is) < pullOf(was) ? ["sheet.pullTestLbf"] : []),
    // Each line tied before the next goes up, or all of them only when they stand.
    ...(was.interiorTies === "byLine" && is.interiorTies === "afterAll" ? ["sheet.interiorTies"] : []),
  ];
}

/** What is checked less before the tent opens: fewer exits for fewer people, papers no longer required, walls and loads no longer looked at. */
function opensWithLess(was: Brief["use"], is: Brief["use"]): string[] {
  const people = ({ occupants }: Brief["use"]) => occupants ?? Number.POSITIVE_INFINITY;
  const dropped = (["permit", "fabricCertificate"] as const).filter((paper) => was[paper] !== "notRequired" && is[paper] === "notRequired");
  const unlooked = (["walls", "hungLoads"] as const).filter((what) => was[what] && !is[what]);
  return [...(people(is) < people(was) ? ["occupants"] : []), ...dropped, ...unlooked];
}

/** Stakes nearer to a mark, days on which it was not in force, and utilities whose lines are gone or that nobody asks any more. */
function ticketSaysLess(was: Ticket, is: Ticket): string[] {
  const gone = was.utilities.filter(({ kind, marked }) => {
    const now = is.utilities.find((utility) => utility.kind === kind);
    return !now || (marked === true && now.marked !== true);
  });
  return [
    ...(is.toleranceIn < was.toleranceIn ? ["toleranceIn"] : []),
    ...(is.validFrom < was.validFrom ? ["validFrom"] : []),
    ...(is.validTo > was.validTo ? ["validTo"] : []),
    ...gone.map(({ kind }) => `utilities.${kind}.marked`),
  ];
}

/** Why a change is not put to a second person: a looser limit under the number of the paper in force is somebody's wish, and no paper. */
export function looserRefusals(from: Frozen, to: Frozen): Refusal[] {
  const looser = looserIn(from, to);
  const isNew = {
    sheet: newNumber(from.brief.sheet?.document ?? null, to.brief.sheet?.document ?? null),
    ticket: newNumber(from.brief.ticket?.number ?? null, to.brief.ticket?.number ?? null),
    lineOwner: false,
  };
  return (["sheet", "ticket", "lineOwner"] as const).flatMap((paper): Refusal[] => {
    const fields = looser.filter((l) => l.paper === paper).map((l) => l.field);
    return fields.length === 0 || isNew[paper] ? [] : [{ why: "looserLimit", paper, fields }];
  });
}

/** Spaces, strokes and capitals make no other paper of it. */
const newNumber = (from: string | null, to: string | null): boolean =>
  to !== null && isPaperNumber(to) && (from === null || plain(from) !== plain(to));
const plain = (number: string): string => (foldName(number).match(/[\p{L}\p{N}]/gu) ?? []).join("");

/** Less of the stake in the ground, or more of it above; told of the embedment where that is what was changed. */
function stakeShows(from: Frozen, to: Frozen, bySheet: boolean): string[] {
  const [was, is] = [from.brief.sheet, to.brief.sheet];
  if (!was || !is) return [];
  const changed = was.embedmentIn !== is.embedmentIn;
  const shallower = changed && embeddedIn(is, to) < embeddedIn(was, from);
  const shows = bySheet && to.limits.maxShowingIn.is > from.limits.maxShowingIn.is;
  return shallower || shows ? [changed ? "sheet.embedmentIn" : "sheet.stakeLengthIn"] : [];
}

/** What has to stand in the ground, in: where the sheet gives no embedment, all but what may show. */
const embeddedIn = (sheet: Sheet, { limits }: Frozen): number => sheet.embedmentIn ?? sheet.stakeLengthIn - limits.maxShowingIn.is;

function leansFurther(was: Limits["stakeLeanDeg"]["is"], is: Limits["stakeLeanDeg"]["is"]): string[] {
  const lean = "sheet.stakeLeanDeg";
  return [...(is.from < was.from ? [`${lean}.from`] : []), ...(is.to > was.to ? [`${lean}.to`] : [])];
}

/** Fewer plates or stakes at a kind of station than before, by the sheet's count or by the planning minimum. */
function fewerAnchors({ plan: { spec: was, stations } }: Frozen, { plan: { spec: is } }: Frozen): string[] {
  return (["corner", "seamEnd", "side"] as const).flatMap((kind) => {
    const same = String(Object.values(was.anchors[kind] ?? {})) === String(Object.values(is.anchors[kind] ?? {}));
    if (same || !stations.some((station) => station.kind === kind)) return [];
    // By what is ordered of a kind, not by a station of it: one may have an engineer's anchor in place of its stakes.
    const [before, after] = [anchorsAt(was, kind), anchorsAt(is, kind)];
    return (["plates", "stakes"] as const).flatMap((what) => (after[what] < before[what] ? [`tent.anchors.${kind}.${what}`] : []));
  });
}

/** Without a figure only an engineer's paper opens the pull: no figure is stricter than any. */
const pullOf = ({ pullTestLbf }: Sheet): number => pullTestLbf ?? Number.POSITIVE_INFINITY;

/**
 * Lines nearer than before, or off the list. Nobody signs for one that was never there: it is shown as looser, and those that are
 * left are asked again. Of a line that was entered on the site it is a correction of what was entered, and no paper governs it; a
 * voltage that the brief lists is its owner's to say, whatever is entered beside it.
 */
function looserOverhead(from: Frozen, to: Frozen): Looser[] {
  const gone = overheadLinesOf(to.brief).length < overheadLinesOf(from.brief).length;
  if (comesNearer(listed(from), beside(from, to))) return [{ field: "site.overheadKv", paper: "lineOwner" }];
  const isEntered = [from, to].some(({ brief }) => (brief.siteModel?.overhead.length ?? 0) > 0);
  if (isEntered) return gone || comesNearer(wires(from), wires(to)) ? [{ field: "siteModel.overhead", paper: null }] : [];
  return gone ? [{ field: "site.overheadKv", paper: null }] : [];
}

/** A line with its clearance, ft. One that is its owner's to say is as far as can be. */
type Wire = ListedLine & { readonly ft: number };
const wires = ({ brief, limits }: Frozen): Wire[] =>
  overheadLinesOf(brief).map((line, i) => ({ ...line, ft: limits.overheadFt.is[i] ?? Number.POSITIVE_INFINITY }));

const listed = (job: Frozen): Wire[] => wires(job).filter(({ name }) => name === null);
/** What a change has beside the lines that were entered before. */
function beside(from: Frozen, to: Frozen): Wire[] {
  const before = new Set(from.brief.siteModel?.overhead.map(({ id }) => id));
  return wires(to).filter(({ name }) => name === null || !before.has(name));
}

/** Whether some line may be nearer than before, those off the list aside: the ones that are left, nearest first, against as many of those before. */
function comesNearer(before: readonly Wire[], after: readonly Wire[]): boolean {
  const kvs = [before, after].map((lines) => JSON.stringify(lines.map(({ kv }) => kv)));
  if (kvs[0] === kvs[1] || after.length === 0) return false;
  const [was, is] = [before, after].map((lines) => lines.map(({ ft }) => ft).sort((a, b) => a - b));
  const more = Math.max(0, is!.length - was!.length);
  return is!.slice(more).some((ft, i) => ft < was![i]!);
}
