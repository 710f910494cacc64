import type { SiteClearances } from "../../../machines/site/clearances.ts";
import type { SiteModel } from "../../../machines/site/model.ts";
import { headingOfNorth } from "../../../machines/site/north.ts";
import type { ClearanceRules } from "../../../machines/site/rules.ts";
import type { Place } from "../../../machines/site/stand.ts";
import type { Point, TentPlan } from "../../../machines/tent/types.ts";
import type { Words } from "../../text/words.ts";
import { ON_PAGE, type Palette } from "../palette.ts";
import { NorthArrow } from "../surroundings.tsx";
import { NeighborLetters, Neighbors, SiteFills, Zones } from "./neighbors.tsx";
import { Pressed, Scales } from "./scales.tsx";
import { type SiteFrame, siteFrame, viewOf } from "./site-frame.ts";
import { TentOnSite } from "./tent-on-site.tsx";

export type SiteDrawingProps = {
  readonly plan: TentPlan;
  readonly site: SiteModel;
  readonly rules: ClearanceRules;
  readonly place: Place;
  readonly clearances: Pick<SiteClearances, "neighbors"> | null;
  readonly words: Words;
  /** Compass bearing of the tent's A–B where it stands, degrees; without it no north is drawn. */
  readonly bearingDeg?: number | undefined;
  /** Points that were pressed or typed and belong to nothing yet. */
  readonly points?: readonly Point[];
  /** Other places that have to be in view. */
  readonly alsoSeen?: readonly Place[];
  readonly palette?: Palette;
  /** Whether it is a file by itself, which has its own size. */
  readonly isFile?: boolean;
  /** Its name on the page, where there is another; patterns have it. */
  readonly id?: string;
};

/** A file takes no colors from the page that shows it: at night it brings its own. */
const AT_NIGHT = "@media (prefers-color-scheme: dark) { :root { color: #ffffff; --ground: #121212 } }";

/** How a site is laid into its drawing: the same for the drawing and for what is pressed on it. */
export const frameOfSite = ({
  plan,
  site,
  place,
  points = [],
  alsoSeen = [],
  palette = ON_PAGE,
  id = "site",
}: Omit<SiteDrawingProps, "words" | "rules" | "clearances">): SiteFrame =>
  siteFrame(viewOf(plan, site, { places: [place, ...alsoSeen], points }), { ...palette, fills: id, avoid: place.middle });

/**
 * A site from above with the tent at its place: zones hatched, buried lines in their published color with their letter, overhead
 * lines, what stands there, edges that were named, the baseline with its scales. The baseline runs up. Kinds differ by shape and
 * letter, never by color alone.
 */
export function SiteDrawing(props: SiteDrawingProps) {
  const { plan, site, rules, place, clearances, words, bearingDeg, points = [] } = props;
  const pen = frameOfSite(props);
  const shared = { pen, site, words };
  const short = clearances?.neighbors.flatMap((n) => n.short) ?? [];
  const text = words.siteDrawing;
  return (
    <svg
      class="drawn-site-plan"
      xmlns="http://www.w3.org/2000/svg"
      viewBox={`0 0 ${pen.widePx} ${pen.highPx}`}
      width={props.isFile ? pen.widePx : "100%"}
      height={props.isFile ? pen.highPx : undefined}
      role="img"
      font-family="system-ui, sans-serif"
      font-weight="500"
      text-anchor="middle"
      dominant-baseline="central"
      stroke-linejoin="round"
    >
      <title>{text.title(plan.widthFt, plan.lengthFt)}</title>
      <desc>
        {text.desc({ buried: site.buried.length, overhead: site.overhead.length, things: site.things.length, short: short.length })}
      </desc>
      {props.isFile && <style>{AT_NIGHT}</style>}
      {props.palette && <rect width={pen.widePx} height={pen.highPx} fill={pen.ground} />}
      <SiteFills pen={pen} />
      <Zones {...shared} rules={rules} />
      <Scales pen={pen} words={words} />
      <Neighbors {...shared} />
      <TentOnSite plan={plan} place={place} pen={pen} short={short} />
      {bearingDeg !== undefined && (
        <NorthArrow
          pen={pen}
          at={[pen.widePx - 26, 42]}
          deg={headingOfNorth(bearingDeg, place.headingDeg)}
          text={words.layoutDrawing.north}
          letterPx={12}
        />
      )}
      <NeighborLetters {...shared} />
      <Pressed pen={pen} points={points} />
    </svg>
  );
}
