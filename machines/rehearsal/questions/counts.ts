import type { Frozen } from "../../install/step.ts";
import type { Station, StationKind } from "../../tent/types.ts";
import type { Seeded } from "../seeded.ts";
import { becauseAt } from "./job-words.ts";
import { type Counted, choice, countSlips, type Made, type Maker, type Skills } from "./question.ts";

type Asked = {
  readonly ask: string;
  readonly params?: Made["params"];
  readonly of: Counted;
  readonly n: number;
  readonly slips: readonly number[];
};

/** A count, with the call at which it is asked. */
function counted(frozen: Frozen, random: Seeded, { ask, params = {}, of, n, slips }: Asked, call: string): Made | null {
  const options = choice(random, { is: "count", n, of }, countSlips(n, slips, of));
  return options && { ask, params, ...options, because: becauseAt(frozen, call) };
}

const sum = (of: readonly Station[], what: "stakes" | "plates"): number => of.reduce((n, s) => n + s[what], 0);

/** At one station. Slips: plates for stakes, another kind of station's, the neighbor's with it. */
const atStation =
  (kind: StationKind, of: "stakes" | "plates"): Maker =>
  (frozen, random) => {
    const { stations } = frozen.plan;
    const there = stations.filter((s) => s.kind === kind);
    if (there.length === 0) return null;
    const station = random.pick(there);
    const others = stations.filter((s) => s.kind !== kind).map((s) => s[of]);
    const slips = [station[of === "stakes" ? "plates" : "stakes"], ...new Set(others), station[of] * 2, station.stakes + station.plates];
    const call = kind === "corner" ? "stakes.corners" : `stakes.${station.edge}`;
    return counted(frozen, random, { ask: of, params: { station: station.id }, of, n: station[of], slips }, call);
  };

/** Along one edge. Slips: both corners with it, one of them, the edge across the corner. */
const alongEdge: Maker = (frozen, random) => {
  const { edges, stations } = frozen.plan;
  const long = edges.filter((e) => e.between.length > 0);
  if (long.length === 0) return null;
  const edge = random.pick(long);
  const on = (name: string) => stations.filter((s) => s.kind !== "corner" && s.edge === name);
  const [corner] = stations.filter((s) => s.kind === "corner");
  const n = sum(on(edge.name), "stakes");
  const across = edges[(edges.indexOf(edge) + 1) % edges.length]!;
  const slips = [
    n + 2 * corner!.stakes,
    n + corner!.stakes,
    sum(on(across.name), "stakes"),
    sum(on(edge.name), "plates"),
    edge.between.length,
  ];
  return counted(frozen, random, { ask: "stakesAlong", params: { edge: edge.name }, of: "stakes", n, slips }, `stakes.${edge.name}`);
};

/** At all four corners. Slips: one corner's, the plates, as if they were sides. */
const atCorners: Maker = (frozen, random) => {
  const corners = frozen.plan.stations.filter((s) => s.kind === "corner");
  const n = sum(corners, "stakes");
  const side = frozen.plan.stations.find((s) => s.kind === "side");
  const slips = [corners[0]!.stakes, sum(corners, "plates"), ...(side ? [side.stakes * corners.length] : []), corners[0]!.stakes * 2];
  return counted(frozen, random, { ask: "stakesCorners", of: "stakes", n, slips }, "stakes.corners");
};

/** Marks or poles along an edge, both corners with it. Slips: without them, one of them, the edge across the corner. */
const onEdge: Maker = (frozen, random) => {
  const { edges } = frozen.plan;
  const edge = random.pick(edges);
  const across = edges[(edges.indexOf(edge) + 1) % edges.length]!;
  const n = edge.rings;
  const slips = [n - 2, n - 1, across.rings, n + 1];
  return counted(frozen, random, { ask: "stationsOn", params: { edge: edge.name }, of: "stations", n, slips }, "marked");
};

/** Straps that hold the cloth before it is laced: corners and seam ends. Slips: all stations, corners alone, seam ends alone. */
const strapped: Maker = (frozen, random) => {
  const { stations } = frozen.plan;
  const corners = stations.filter((s) => s.kind === "corner").length;
  const ends = stations.filter((s) => s.kind === "seamEnd").length;
  const slips = [stations.length, ends, corners, corners + ends / 2].filter((n) => Number.isInteger(n));
  return counted(frozen, random, { ask: "strapped", of: "straps", n: corners + ends, slips }, "cloth.strapped");
};

/** Poles around the edge. Slips: the corners left out, corners counted twice, the stake plates. */
const around: Maker = (frozen, random) => {
  const { stations, plates } = frozen.plan;
  const n = stations.length;
  return counted(frozen, random, { ask: "around", of: "sidePoles", n, slips: [n - 4, n + 4, plates.length, n - 2] }, "sides.laid");
};

/** Poles inside. Slips: without the center poles, the center poles alone, one to a row. */
const inside: Maker = (frozen, random) => {
  const { poles, rows } = frozen.plan;
  const centers = poles.filter((p) => p.kind === "center").length;
  const slips = [poles.length - centers, centers, rows.length, poles.length + centers];
  return counted(frozen, random, { ask: "inside", of: "poles", n: poles.length, slips }, "poles.pinned");
};

/** Stakes that come back. Slips: inside ones forgotten, the plates, corners forgotten. */
const back: Maker = (frozen, random) => {
  const { stations, poles } = frozen.plan;
  const all = sum(stations, "stakes");
  const corners = sum(
    stations.filter((s) => s.kind === "corner"),
    "stakes",
  );
  const slips = [all, sum(stations, "plates") + poles.length, all + poles.length - corners, all - poles.length];
  return counted(frozen, random, { ask: "stakesBack", of: "stakes", n: all + poles.length, slips }, "back.stakes");
};

/** How many of a thing there are: from the plan. */
export const COUNTS: Skills = {
  "stakes.corner": ["anchorsSet", atStation("corner", "stakes")],
  "stakes.seamEnd": ["anchorsSet", atStation("seamEnd", "stakes")],
  "stakes.side": ["anchorsSet", atStation("side", "stakes")],
  "plates.corner": ["anchorsSet", atStation("corner", "plates")],
  "stakes.corners": ["anchorsSet", atCorners],
  "stakes.edge": ["anchorsSet", alongEdge],
  "stations.edge": ["anchorsSet", onEdge],
  "straps.cloth": ["sectionsJoined", strapped],
  "poles.around": ["perimeterRaised", around],
  "poles.inside": ["interiorRaised", inside],
  "stakes.back": ["struck", back],
};
