import type { Site } from "../../../machines/install/brief.ts";
import type { TentPlan } from "../../../machines/tent/types.ts";
import type { GroundAround } from "../../drawing/site/ground-around.ts";
import type { StationRatio } from "../../drawing/station-ratio.ts";
import type { Digests } from "../proof/state.ts";

/** The papers that the sheet is printed on. */
export type Paper = "a4" | "letter";
export const PAPERS: readonly Paper[] = ["a4", "letter"];

/** The plan that a layout sheet shows, and what is known of where it lies. */
export type LayoutState = {
  readonly job: { readonly id: string; readonly title: string; readonly rehearsal: boolean };
  readonly plan: TentPlan;
  readonly site: Pick<Site, "baselineBearingDeg" | "street">;
  /** What the screening of the anchors comes to; none where nobody told anything of them. */
  readonly ratios: readonly StationRatio[] | undefined;
  /** Lines, wires and things around it, where anybody entered any. */
  readonly around: GroundAround | undefined;
  /** The entry whose plan this is, where it is not the one in force. */
  readonly version: number | null;
  /** The last entry of the record that it stands in. */
  readonly record: Digests["record"];
};
