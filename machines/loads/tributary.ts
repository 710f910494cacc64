import type { EdgePlan, TentPlan } from "../tent/types.ts";

/** What of the tent a station stands for: how much of its edges, ft, and how much of its roof, sq ft, reckoned in two ways. */
export type Tributary = {
  readonly edgeFt: number;
  /** Roof that is nearer to this length of edge than to any other edge. */
  readonly nearestSqFt: number;
  /** Its share of the whole roof by its length of edge. */
  readonly shareSqFt: number;
};

/**
 * Every station's part of the tent, by id. Each stands for half of the bay on either side. The roof nearest to it is that of a hip roof
 * with all its slopes alike; that makes the middle of a long side the worst, the plain share makes the corners so, and the larger is used
 * for each. Common practice, no source.
 */
export function tributaries(plan: Pick<TentPlan, "spec" | "edges">): ReadonlyMap<string, Tributary> {
  const { widthFt, lengthFt } = plan.spec;
  const perimeterFt = plan.edges.reduce((sum, e) => sum + e.lengthFt, 0);
  const depthFt = Math.min(widthFt, lengthFt) / 2;
  const found = new Map<string, { edgeFt: number; nearestSqFt: number }>();
  for (const edge of plan.edges)
    for (const { station, fromFt, toFt } of halfBays(edge)) {
      const before = found.get(station) ?? { edgeFt: 0, nearestSqFt: 0 };
      const nearestSqFt = areaUpTo(toFt, edge.lengthFt, depthFt) - areaUpTo(fromFt, edge.lengthFt, depthFt);
      found.set(station, { edgeFt: before.edgeFt + toFt - fromFt, nearestSqFt: before.nearestSqFt + nearestSqFt });
    }
  return new Map([...found].map(([id, part]) => [id, { ...part, shareSqFt: (widthFt * lengthFt * part.edgeFt) / perimeterFt }]));
}

/** The stretch of an edge that each of its stations stands for, corners included. */
function halfBays({ name, between, baysFt }: EdgePlan): { station: string; fromFt: number; toFt: number }[] {
  const ids = [name[0]!, ...between, name[1]!];
  const atFt = [0];
  for (const bayFt of baysFt) atFt.push(atFt.at(-1)! + bayFt);
  const middle = (i: number) => (atFt[i]! + atFt[i + 1]!) / 2;
  return ids.map((station, i) => ({
    station,
    fromFt: i === 0 ? 0 : middle(i - 1),
    toFt: i === ids.length - 1 ? atFt[i]! : middle(i),
  }));
}

/** Roof nearest to the first `alongFt` of an edge: its depth grows foot by foot from either corner, up to the ridge. */
function areaUpTo(alongFt: number, edgeFt: number, ridgeFt: number): number {
  const depthFt = Math.min(ridgeFt, edgeFt / 2);
  const rising = Math.min(alongFt, depthFt) ** 2 / 2;
  const level = depthFt * Math.max(0, Math.min(alongFt, edgeFt - depthFt) - depthFt);
  const leftFt = Math.max(0, alongFt - (edgeFt - depthFt));
  return rising + level + depthFt * leftFt - leftFt ** 2 / 2;
}
