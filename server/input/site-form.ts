import { type Found, named } from "../../machines/install/found.ts";
import { own } from "../../machines/lookup/own.ts";
import { BURIED_KINDS, HOW_TOLD, type SiteModel, THING_KINDS } from "../../machines/site/model.ts";
import type { Shape } from "../../machines/site/shape.ts";
import { toldAs } from "../../machines/site/told-as.ts";
import type { Point } from "../../machines/tent/types.ts";
import { isGroup, MAX_ROWS, rowsOf, type SiteGroup } from "../../views/pages/site/fields.ts";
import type { Fields } from "./form.ts";
import { Problem, type Sentence, type Wrong } from "./problem.ts";
import { offsetIn, withPoint } from "./site-points.ts";
import { noFields } from "./strict.ts";
import { typed } from "./typed.ts";

/** A site as `readSite` takes it, not checked yet. */
export type SiteInput = Readonly<Record<string, unknown>>;
type Entry = Readonly<Record<string, unknown>>;
type List = "buried" | "overhead" | "things";
const LIST: Readonly<Partial<Record<SiteGroup, List>>> = { buried: "buried", overhead: "overhead", thing: "things" };

/** The group that a form or an address names; throws a Problem where it names none. */
export function groupOf(name: string | undefined): SiteGroup {
  if (name === undefined || !isGroup(name)) throw new Problem(404, (w) => w.siteForms.noSuch(name ?? ""));
  return name;
}

/** What a form says of one line, thing, area, slope or place, as `readSite` takes it, but without a name. */
export function oneTold(group: SiteGroup, f: Fields, before: Entry | null): Entry {
  const offsets = rowsOf(f).map((no) => offsetIn(f, no));
  // A file's line may have more points than anybody types.
  const points = before && f.many === "yes" ? pointsOf(before) : offsets;
  const errorFt = typed(f.errorFt, "ft") ?? 0;
  switch (group) {
    case "buried":
      return {
        kind: f.kind || BURIED_KINDS[0],
        told: f.told || HOW_TOLD[0],
        widthIn: typed(f.widthIn, "in"),
        toleranceIn: typed(f.toleranceIn, "in"),
        errorFt,
        points,
      };
    case "overhead":
      return { kv: bare(f.kv), lowestFt: typed(f.lowestFt, "ft"), errorFt, points };
    case "thing":
      return { kind: f.kind || THING_KINDS[0], errorFt, shape: shapeTold(f, points as readonly unknown[]) };
    case "ground":
    case "ticketArea":
      return { errorFt, corners: points };
    case "slope":
      return { percent: bare(f.percent) ?? "", downhillDeg: typed(f.downhillDeg, "deg") ?? "" };
    case "wanted":
      return { cornerA: offsets[0] ?? { alongFt: "", offFt: 0 }, headingDeg: typed(f.headingDeg, "deg") ?? 0 };
  }
}

/** A number without a unit that anybody would say with it. */
function bare(text: string | undefined): number | string | null {
  const trimmed = text?.trim().replace(/\s*(?:kv|%)$/i, "") ?? "";
  return trimmed === "" ? null : /^-?\d+(?:\.\d+)?$/.test(trimmed) ? Number(trimmed) : trimmed;
}

const shapeTold = (f: Fields, points: readonly unknown[]): Entry => {
  if (f.shape === "circle")
    return { is: "circle", middle: points[0] ?? { alongFt: "", offFt: 0 }, radiusFt: typed(f.radiusFt, "ft") ?? "" };
  return f.shape === "path" ? { is: "path", points } : { is: "polygon", corners: points };
};

const pointsOf = (one: Entry): unknown => {
  const shape = (one.shape ?? {}) as Entry;
  return one.points ?? one.corners ?? shape.points ?? shape.corners ?? [];
};

/** A site with one of its parts added under the next free name, replaced, or removed. */
export function siteWith(
  site: SiteModel,
  group: SiteGroup,
  { id, one }: { id: string | null; one: Entry | null },
): { readonly input: SiteInput; readonly path: string; readonly name: string } {
  const told = toldAs(site) as unknown as Record<string, unknown>;
  const list = own(LIST, group);
  if (list === undefined) {
    // What is done about stakes is for the place where they stand.
    const { fixes: _, ...rest } = told;
    return { input: { ...(group === "wanted" ? rest : told), [group]: one }, path: group, name: group };
  }
  const all = told[list] as readonly Entry[];
  const at = id === null ? all.length : all.findIndex((other) => other.id === id);
  if (at < 0) throw new Problem(404, (w) => w.siteForms.noSuch(id!));
  const name = id ?? nameFor(site, group, one!);
  const changed = one === null ? all.filter((_, i) => i !== at) : [...all.slice(0, at), { ...one, id: name }, ...all.slice(at + 1)];
  return { input: { ...told, [list]: changed }, path: `${list}.${at}`, name };
}

/** The next free name of a kind, as for what is found. */
function nameFor(site: SiteModel, group: SiteGroup, { kind }: Entry): string {
  const errorFt = 0;
  const found =
    group === "buried"
      ? named(site, { is: "buried", line: { kind: kind as never, told: "found", widthIn: null, toleranceIn: null, errorFt, points: [] } })
      : group === "overhead"
        ? named(site, { is: "overhead", line: { kv: null, lowestFt: null, errorFt, points: [] } })
        : named(site, { is: "thing", thing: { kind: kind as never, errorFt, shape: { is: "path", points: [] } } });
  return idOf(found);
}
const idOf = (found: Found): string => (found.is === "thing" ? found.thing.id : found.line.id);

/** What is wrong with one part of a site, by the fields of its form; what stands beside none of them by its place in the site. */
export function besideSiteFields(wrong: Wrong, path: string, f: Fields): Wrong {
  const rows = rowsOf(f);
  const beside = noFields<Sentence>();
  for (const [field, why] of Object.entries(wrong)) {
    const rest = field.replace(`siteModel.${path}`, "").replace(/^\./, "");
    const point = /^(?:shape\.)?(?:points|corners)\.(\d+)(?:\.(\w+))?$/.exec(rest);
    const single = /^(?:cornerA|shape\.middle)(?:\.(\w+))?$/.exec(rest);
    const row = single ? (rows[0] ?? 1) : point ? (rows[Number(point[1])] ?? 1) : null;
    if (row !== null) beside[`p.${row}.${(single ?? point)!.at(-1) === "offFt" ? "off" : "along"}`] ??= why;
    else if (/^(?:shape\.)?(?:points|corners|is)?$/.test(rest)) beside["p.1.along"] ??= why;
    else beside[rest.replace(/^shape\./, "")] ??= why;
  }
  return beside;
}

/** A part of a site as its form shows it. */
export function formOf(site: SiteModel, group: SiteGroup, id: string | null): Fields {
  const text = (n: number | null): string => (n === null ? "" : String(n));
  const rows = (points: readonly Point[]): Fields => {
    if (points.length > MAX_ROWS) return { many: "yes" };
    return points.reduce((fields: Fields, p) => withPoint(fields, p), {});
  };
  const missing = (): never => {
    throw new Problem(404, (w) => w.siteForms.noSuch(id ?? group));
  };
  switch (group) {
    case "buried": {
      if (id === null) return {};
      const { kind, told, widthIn, toleranceIn, errorFt, points } = site.buried.find((line) => line.id === id) ?? missing();
      return { kind, told, widthIn: text(widthIn), toleranceIn: text(toleranceIn), errorFt: text(errorFt), ...rows(points) };
    }
    case "overhead": {
      if (id === null) return {};
      const { kv, lowestFt, errorFt, points } = site.overhead.find((line) => line.id === id) ?? missing();
      return { kv: text(kv), lowestFt: text(lowestFt), errorFt: text(errorFt), ...rows(points) };
    }
    case "thing": {
      if (id === null) return {};
      const { kind, errorFt, shape } = site.things.find((thing) => thing.id === id) ?? missing();
      return {
        kind,
        errorFt: text(errorFt),
        shape: shape.is,
        radiusFt: shape.is === "circle" ? text(shape.radiusFt) : "",
        ...rows(cornersOf(shape)),
      };
    }
    case "ground":
    case "ticketArea": {
      const area = site[group];
      return area ? { errorFt: text(area.errorFt), ...rows(area.corners) } : {};
    }
    case "slope":
      return site.slope ? { percent: text(site.slope.percent), downhillDeg: text(site.slope.downhillDeg) } : {};
    case "wanted":
      return site.wanted ? { headingDeg: text(site.wanted.headingDeg), ...rows([site.wanted.cornerA]) } : {};
  }
}

const cornersOf = (shape: Shape): readonly Point[] =>
  shape.is === "circle" ? [shape.middle] : shape.is === "path" ? shape.points : shape.corners;

/** A part of a site as it was told, to keep what its form does not show. */
export function toldOne(site: SiteModel, group: SiteGroup, id: string | null): Entry | null {
  const told = toldAs(site) as unknown as Record<string, unknown>;
  const list = own(LIST, group);
  if (list === undefined) return (told[group] as Entry | null) ?? null;
  return (told[list] as readonly Entry[]).find((one) => one.id === id) ?? null;
}
