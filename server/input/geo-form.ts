import { MIN_TOLERANCE_IN } from "../../machines/install/limits.ts";
import { type GeoMeaning, type ReadGeoJson, readGeoJson } from "../../machines/site/geo-json.ts";
import { BURIED_KINDS, EMPTY_SITE, type SiteModel, THING_KINDS } from "../../machines/site/model.ts";
import { nameWithin } from "../../machines/site/names.ts";
import { toldAs } from "../../machines/site/told-as.ts";
import type { Fields } from "./form.ts";
import { Problem, type Sentence } from "./problem.ts";
import type { SiteInput } from "./site-form.ts";
import { siteWrong } from "./site-model.ts";
import { noFields } from "./strict.ts";

/** The longest file that is taken, bytes: of a file far over the stretches of a site it can still be said how many there are. */
export const MAX_GEOJSON_BYTES = 6_000_000;

/** What all of a file may be: buried lines by their kind, or one of the others. */
export const MEANINGS = [...BURIED_KINDS, "overhead", ...THING_KINDS, "ground", "ticketArea"] as const;

const BOUNDS = { lon: 180, lat: 90, bearing: 360 } as const;

/** Reads what a form of a GeoJSON file says. Throws a Problem that names every field that is wrong; nothing is half read. */
export function readGeoForm(fields: Fields, text: string): Extract<ReadGeoJson, { site: SiteModel }> {
  const wrong = noFields<Sentence>();
  const degrees = (name: keyof typeof BOUNDS): number => {
    const given = (fields[name] ?? "").trim().replace(/°$/, "");
    const [n, most] = [Number(given), BOUNDS[name]];
    if (given === "" || !/^[-+]?\d*\.?\d+$/.test(given)) wrong[name] = (w) => w.siteForms.notDegrees(given);
    else if (Math.abs(n) > most) wrong[name] = (w) => w.siteForms.outside(n, name === "bearing" ? 0 : -most, most);
    return n;
  };
  const frame = { lonDeg: degrees("lon"), latDeg: degrees("lat"), baselineBearingDeg: degrees("bearing") };
  if (text.trim() === "") wrong.text = (w) => w.siteForms.noFile;
  if (Object.keys(wrong).length > 0) throw new Problem(422, (w) => w.siteForms.wrong, wrong);
  const as = meaningOf(fields.as);
  const read = readGeoJson(text, { frame, minToleranceIn: MIN_TOLERANCE_IN, ...(as ? { as } : {}) });
  if ("problems" in read) throw new Problem(422, (w) => w.siteForms.wrong, siteWrong(read.problems));
  return read;
}

function meaningOf(what: string | undefined): GeoMeaning | undefined {
  const known = MEANINGS.find((one) => one === what);
  if (known === undefined) return undefined;
  const kind = BURIED_KINDS.find((one) => one === known);
  return kind ? { what: "buried", kind, told: "ticket" } : { what: known as GeoMeaning["what"] };
}

/** A site as it stands with what was read beside it, under names that are free, or in its place. Where the tent is wanted stays. */
export function withRead(stands: SiteModel, read: SiteModel, instead: boolean): SiteInput {
  const base = instead
    ? { ...EMPTY_SITE, wanted: stands.wanted, slope: stands.slope, ...(stands.fixes ? { fixes: stands.fixes } : {}) }
    : stands;
  const taken = new Set([...base.buried, ...base.overhead, ...base.things].map(({ id }) => id));
  const renamed = <T extends { readonly id: string }>(one: T): T => {
    let [id, n] = [one.id, 1];
    while (taken.has(id)) id = nameWithin(one.id, ` (${++n})`);
    taken.add(id);
    return { ...one, id };
  };
  return toldAs({
    ...base,
    buried: [...base.buried, ...read.buried.map(renamed)],
    overhead: [...base.overhead, ...read.overhead.map(renamed)],
    things: [...base.things, ...read.things.map(renamed)],
    ground: read.ground ?? base.ground,
    ticketArea: read.ticketArea ?? base.ticketArea,
  });
}
