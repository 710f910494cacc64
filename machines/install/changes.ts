import { digest } from "../digest/digest.ts";
import type { Pull } from "../loads/ground.ts";
import { nearlyEqual } from "../tent/grid.ts";
import { CORNERS, type Corner, type EdgeName, type InteriorPole, type KitItem, type Point } from "../tent/types.ts";
import type { Role } from "./brief.ts";
import type { PersonId } from "./ids.ts";
import { looserIn } from "./looser.ts";
import { type SiteChange, siteChangesOf } from "./site-changes.ts";
import type { Frozen } from "./step.ts";

type Fact = string | number | boolean | null;

/** One thing that an amendment changes, as the crew and a reader of the record are told of it. */
export type Change =
  | { readonly what: "rings"; readonly edge: EdgeName; readonly from: number; readonly to: number }
  | { readonly what: "pole"; readonly kind: InteriorPole["kind"]; readonly id: string; readonly at: Point; readonly more: boolean }
  /** A corner mark, in feet from where it was. */
  | { readonly what: "corner"; readonly corner: Corner; readonly by: Point }
  | { readonly what: "kit"; readonly item: KitItem; readonly from: number; readonly to: number }
  | { readonly what: "person"; readonly id: PersonId; readonly from: Role | null; readonly to: Role | null }
  /** A line, a thing or an area of the site, where the tent stands on it, or what is done about a stake. */
  | { readonly what: "site"; readonly change: SiteChange }
  /** The pulls that were made before the job; `looser` where stakes count for more by them. */
  | { readonly what: "pulls"; readonly from: readonly Pull[]; readonly to: readonly Pull[]; readonly looser?: true }
  /** A field of the brief by its name in the form; `null` where it is not there. `looser` where a limit gets looser by it. */
  | { readonly what: "fact"; readonly field: string; readonly from: Fact; readonly to: Fact; readonly looser?: true };

/** Everything that differs between two versions of a job, what makes a limit looser first, then what is seen on the ground. Empty where nothing does. */
export function changesOf(from: Frozen, to: Frozen): Change[] {
  const resized = from.plan.widthFt !== to.plan.widthFt || from.plan.lengthFt !== to.plan.lengthFt;
  const site = siteChangesOf(from, to).map((change): Change => ({ what: "site", change }));
  const isLooser = (change: Change) => change.what === "site" && "looser" in change.change;
  return [
    ...site.filter(isLooser),
    ...pullsOf(from, to),
    ...factsOf(from, to),
    ...site.filter((change) => !isLooser(change)),
    ...ringsOf(from, to),
    // Of another tent every pole and corner is another: its size says it all.
    ...(resized ? [] : [...polesOf(from, to), ...cornersOf(from, to)]),
    ...kitOf(from, to),
    ...peopleOf(from, to),
  ];
}

function pullsOf(from: Frozen, to: Frozen): Change[] {
  const [before, after] = [from, to].map(({ brief }) => brief.anchorage?.pulls ?? []) as [readonly Pull[], readonly Pull[]];
  if (digest.of(before) === digest.of(after)) return [];
  const isLooser = looserIn(from, to).some(({ field }) => field === "anchorage.pulls");
  return [{ what: "pulls", from: before, to: after, ...(isLooser ? { looser: true } : {}) }];
}

function ringsOf(from: Frozen, to: Frozen): Change[] {
  return to.plan.edges.flatMap((edge): Change[] => {
    const before = from.plan.edges.find((e) => e.name === edge.name)!.rings;
    return before === edge.rings ? [] : [{ what: "rings", edge: edge.name, from: before, to: edge.rings }];
  });
}

function polesOf(from: Frozen, to: Frozen): Change[] {
  const among = (pole: InteriorPole, poles: readonly InteriorPole[]) =>
    poles.some((p) => p.kind === pole.kind && nearlyEqual(p.xFt, pole.xFt) && nearlyEqual(p.yFt, pole.yFt));
  const only = (poles: readonly InteriorPole[], others: readonly InteriorPole[], more: boolean) =>
    poles.filter((p) => !among(p, others)).map(({ kind, id, xFt, yFt }): Change => ({ what: "pole", kind, id, at: { xFt, yFt }, more }));
  return [...only(to.plan.poles, from.plan.poles, true), ...only(from.plan.poles, to.plan.poles, false)];
}

function cornersOf(from: Frozen, to: Frozen): Change[] {
  const mark = ({ plan }: Frozen, corner: Corner) => plan.stations.find((s) => s.id === corner)!;
  return CORNERS.flatMap((corner): Change[] => {
    const [before, after] = [mark(from, corner), mark(to, corner)];
    const by = { xFt: after.xFt - before.xFt, yFt: after.yFt - before.yFt };
    return nearlyEqual(by.xFt, 0) && nearlyEqual(by.yFt, 0) ? [] : [{ what: "corner", corner, by }];
  });
}

function kitOf(from: Frozen, to: Frozen): Change[] {
  const count = ({ plan }: Frozen, item: KitItem) => plan.kit.find((k) => k.item === item)?.count ?? 0;
  const items = [...new Set([...from.plan.kit, ...to.plan.kit].map((k) => k.item))];
  return items.flatMap((item): Change[] => {
    const [before, after] = [count(from, item), count(to, item)];
    return before === after ? [] : [{ what: "kit", item, from: before, to: after }];
  });
}

function peopleOf(from: Frozen, to: Frozen): Change[] {
  const role = ({ brief }: Frozen, id: PersonId) => brief.crew.find((p) => p.id === id)?.role ?? null;
  const ids = [...new Set([...from.brief.crew, ...to.brief.crew].map((p) => p.id))];
  return ids.flatMap((id): Change[] => {
    const [before, after] = [role(from, id), role(to, id)];
    return before === after ? [] : [{ what: "person", id, from: before, to: after }];
  });
}

/** What is told in another way: as rings, poles, corners or people. */
const TOLD: readonly string[] = ["tent.rings", "tent.shifted", "tent.add", "tent.leaveOut", "crew", "siteModel", "anchorage.pulls"];

function factsOf(from: Frozen, to: Frozen): Change[] {
  const [before, after] = [flat(from.brief), flat(to.brief)];
  const looser = new Set(looserIn(from, to).map((l) => l.field));
  const facts = [...new Set([...before.keys(), ...after.keys()])].flatMap((field): Change[] => {
    if (TOLD.some((told) => field === told || field.startsWith(`${told}.`))) return [];
    const [was, is] = [before.get(field) ?? null, after.get(field) ?? null];
    return was === is ? [] : [{ what: "fact", field, from: was, to: is, ...(looser.has(field) ? { looser: true } : {}) }];
  });
  const isLooser = (change: Change) => change.what === "fact" && change.looser === true;
  return [...facts.filter(isLooser), ...facts.filter((change) => !isLooser(change))];
}

/** Single facts by their dotted names; a list of plain values is one fact, a list of things by their kinds several. */
function flat(value: object, prefix = ""): Map<string, Fact> {
  const facts = new Map<string, Fact>();
  for (const [key, v] of Object.entries(value) as [string, unknown][]) {
    const field = prefix === "" ? key : `${prefix}.${key}`;
    if (v === null || v === undefined || typeof v !== "object") facts.set(field, (v ?? null) as Fact);
    else if (Array.isArray(v) && v.every((item) => typeof item !== "object" || item === null))
      facts.set(field, v.map((item) => item ?? "unknown").join(", "));
    else if (Array.isArray(v)) for (const item of v) for (const [k, fact] of listed(item as object)) facts.set(`${field}.${k}`, fact);
    else for (const [k, fact] of flat(v, field)) facts.set(k, fact);
  }
  return facts;
}

/** A thing in a list goes by its kind: `ticket.utilities.gas`. */
function listed(item: object): [string, Fact][] {
  const { kind, ...rest } = item as { kind?: string };
  return [...flat(rest)].map(([key, fact]) => [kind === undefined ? key : `${kind}.${key}`, fact]);
}
