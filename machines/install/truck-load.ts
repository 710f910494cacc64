import { type LoadLine, loadOf } from "../tent/load.ts";
import { toolsOf } from "../tent/tools.ts";
import type { TentPlan } from "../tent/types.ts";
import { ballastOf } from "./ballast.ts";
import type { Brief } from "./brief.ts";
import { onSite } from "./crew.ts";
import type { Limits } from "./limits.ts";
import { mayPullAnchors } from "./phases/anchors-screened.ts";

/** Exits that are marked and have an extinguisher where the table gives no figure: its most. From memory, and only ever more. */
const EXITS_UNKNOWN = 4;

/** The whole truck of a job, in order of use: the tent with its spares, and whatever a call asks for besides. */
export function truckLoadOf(brief: Brief, plan: TentPlan, { exits, exitSignsFrom }: Limits): LoadLine[] {
  const { crew, site, use, kit } = brief;
  const weights = ballastOf(brief, plan);
  const count = (item: string) => plan.kit.find((line) => line.item === item)?.count ?? 0;
  const stakeLineFt = (lengthFt: number) => lengthFt + 2 * plan.spec.setbackFt;
  const tools = toolsOf({
    people: onSite(crew).length,
    pieces: plan.pieces.length,
    stakes: count("perimeterStake") + count("interiorStake"),
    straps: count("perimeterStrap"),
    longestFt: Math.max(plan.diagonalFt, ...plan.edges.map((e) => stakeLineFt(e.lengthFt))),
    walls: use.walls,
    exits: exits.is?.exits ?? EXITS_UNKNOWN,
    exitSigns: use.occupants === null || use.occupants >= exitSignsFrom.is,
    pulls: !site.soilKnown || mayPullAnchors(brief, plan),
    ...(weights?.is === "known" ? { weights: weights.straps } : {}),
  });
  const lines = loadOf({ kit: [...plan.kit, ...tools] }, kit);
  return weights?.is === "known" ? lines.map((line) => weighed(line, weights.eachLb)) : lines;
}

/** A weight is worked out, and no yard says otherwise: what one has to weigh at least. */
const weighed = (line: LoadLine, eachLb: number): LoadLine =>
  line.item === "ballastWeight" ? { ...line, unitLb: eachLb, lb: eachLb * line.count } : line;
