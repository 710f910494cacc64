import type { KitItem, KitLine, TentPlan } from "./types.ts";

/**
 * Counts every item of the tent itself; tools.ts has what goes on the truck besides. Each stake plate takes one ratchet strap; each interior pole stands on one pole
 * plate and is tied down with one stake and one strap. Common practice, no source. `use` is the key of the text that says
 * what the item is for.
 *
 * @example kitOf(plan).find((line) => line.item === "sidePole").count // 32
 */
export function kitOf(plan: Pick<TentPlan, "pieces" | "poles" | "stations" | "plates">): KitLine[] {
  const pieces = (kind: TentPlan["pieces"][number]["kind"]) => plan.pieces.filter((p) => p.kind === kind).length;
  const poles = (kind: TentPlan["poles"][number]["kind"]) => plan.poles.filter((p) => p.kind === kind).length;
  const corners = plan.stations.filter((s) => s.kind === "corner").length;
  const counts: Record<KitItem, number> = {
    wholeTop: pieces("whole"),
    endPiece: pieces("end"),
    splitEndPiece: pieces("splitEnd"),
    midPiece: pieces("mid"),
    centerPole: poles("center"),
    quarterPole: poles("quarter"),
    sidePole: plan.stations.length - corners,
    cornerPole: corners,
    perimeterStake: plan.plates.reduce((n, p) => n + p.stakes, 0),
    stakePlate: plan.plates.length,
    perimeterStrap: plan.plates.length,
    interiorStake: plan.poles.length,
    interiorStrap: plan.poles.length,
    polePlate: plan.poles.length,
  };
  return (Object.entries(counts) as [KitItem, number][])
    .filter(([, count]) => count > 0)
    .map(([item, count]) => ({ item, count, use: item }));
}
