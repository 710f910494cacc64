import { digest } from "../digest/digest.ts";
import { type BuriedKind, type BuriedLine, EMPTY_SITE, type OverheadLine, type SiteModel, type Thing } from "../site/model.ts";
import type { Brief } from "./brief.ts";
import { overheadLinesOf } from "./overhead-lines.ts";
import type { Frozen } from "./step.ts";

/** One more line, wire or thing that somebody found on the site. It is only ever added. */
export type Found =
  | { readonly is: "buried"; readonly line: BuriedLine }
  | { readonly is: "overhead"; readonly line: OverheadLine }
  | { readonly is: "thing"; readonly thing: Thing };

/** What was found, before the program names it. */
export type Unnamed =
  | { readonly is: "buried"; readonly line: Omit<BuriedLine, "id"> }
  | { readonly is: "overhead"; readonly line: Omit<OverheadLine, "id"> }
  | { readonly is: "thing"; readonly thing: Omit<Thing, "id"> };

/** The name of what was found. */
export const nameOf = (found: Found): string => (found.is === "thing" ? found.thing.id : found.line.id);

/**
 * What was found under the next name of its kind that is free: `gas 1`, `gas 2`, `overhead 1`, `building 1`.
 *
 * @example nameOf(named(undefined, { is: "overhead", line: { kv: 7.2, lowestFt: null, errorFt: 0, points: [] } })) // "overhead 1"
 */
export function named(site: SiteModel | undefined, found: Unnamed): Found {
  const { buried, overhead, things } = site ?? EMPTY_SITE;
  const taken = new Set([...buried, ...overhead, ...things].map(({ id }) => id));
  const kind: BuriedKind | Thing["kind"] | "overhead" = found.is === "buried" ? found.line.kind : found.is === "thing" ? found.thing.kind : "overhead"; // biome-ignore format: one line reads best
  const word = kind.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
  let n = 1;
  while (taken.has(`${word} ${n}`)) n++;
  const id = `${word} ${n}`;
  switch (found.is) {
    case "buried":
      return { is: "buried", line: { id, ...found.line } };
    case "overhead":
      return { is: "overhead", line: { id, ...found.line } };
    case "thing":
      return { is: "thing", thing: { id, ...found.thing } };
  }
}

/** The brief with one more line, wire or thing on its site, and otherwise as it was. */
export function withFound(brief: Brief, found: Found): Brief {
  const site = brief.siteModel ?? EMPTY_SITE;
  switch (found.is) {
    case "buried":
      return { ...brief, siteModel: { ...site, buried: [...site.buried, found.line] } };
    case "overhead":
      return { ...withOneMore(brief, found.line.kv), siteModel: { ...site, overhead: [...site.overhead, found.line] } };
    case "thing":
      return { ...brief, siteModel: { ...site, things: [...site.things, found.thing] } };
  }
}

/**
 * The brief with a voltage that one more wire would take off its list: whether the two are one line is for a lead and a second
 * person to say.
 */
function withOneMore(brief: Brief, kv: number | null): Brief {
  const isListed = overheadLinesOf(brief).some((line) => line.name === null && line.kv === kv);
  return isListed ? { ...brief, site: { ...brief.site, overheadKv: [...brief.site.overheadKv, kv] } } : brief;
}

/** Whether a job as it is to be differs from the job as it is by nothing but what was found. */
export function onlyAdds(from: Frozen, to: Frozen, found: Found): boolean {
  const { buried, overhead, things } = from.brief.siteModel ?? EMPTY_SITE;
  if ([...buried, ...overhead, ...things].some(({ id }) => id === nameOf(found))) return false;
  const rest = ({ plan, limits: { overheadFt: _, ...limits } }: Frozen, brief: Brief) => digest.of([brief, plan, limits]);
  return rest(to, to.brief) === rest(from, withFound(from.brief, found));
}
