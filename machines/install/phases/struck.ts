import { CORNERS, type EdgeName, type TentPlan } from "../../tent/types.ts";
import type { Brief } from "../brief.ts";
import { COMPETENT, exactly, gate, noneOf, yes } from "../gates.ts";
import type { StepId } from "../ids.ts";
import type { Limits } from "../limits.ts";
import type { StepDraft } from "../step.ts";
import { truckLoadOf } from "../truck-load.ts";
import { asOne, countIn, countOut, type Line, lineParams, linesOf } from "./pole-lines.ts";

/** Where a strike begins, by how far the job had got. */
export const STRIKE_FROM = { standing: "strike.people", cloth: "strike.unlace", stakes: "strike.stakes" } as const satisfies Record<
  string,
  StepId
>;

/** A raise backward: people out, talk and count, interior lines down one by one, sides, straps, cloth, stakes, and everything counted back. */
export function struck(brief: Brief, plan: TentPlan, limits: Limits): StepDraft[] {
  const kit = (item: string) => plan.kit.find((k) => k.item === item)?.count ?? 0;
  const load = truckLoadOf(brief, plan, limits);
  const stakes = kit("perimeterStake") + kit("interiorStake");
  return [
    { id: STRIKE_FROM.standing, begins: "strike", gate: gate(yes, { roles: COMPETENT }) },
    { id: "strike.power", work: "lower", gate: gate(yes, { roles: COMPETENT }) },
    ...(brief.use.walls ? [{ id: "strike.walls", work: "lower" as const, gate: gate(yes) }] : []),
    { id: "strike.ease", work: "ease" },
    ...linesOf(brief, plan)
      .reverse()
      .flatMap((line) => lowerCalls(brief, line)),
    { id: "strike.interiorDown", gate: gate(noneOf, { roles: COMPETENT, reopenedBy: ["poles"] }) },
    ...sidePoles(plan),
    ...cloth(plan).map((c): StepDraft => ({ ...c, site: "spread" })),
    { id: STRIKE_FROM.stakes, work: "outside", site: "staked", params: { stakes } },
    {
      id: "back.stakes",
      site: "staked",
      gate: gate(exactly(stakes), { roles: COMPETENT, reopenedBy: ["anchors", "stations", "poles"], paper: "siteOwner" }),
    },
    {
      id: "back.kit",
      site: "staked",
      params: { lines: load.length },
      gate: gate(
        { kind: "counts", want: Object.fromEntries(load.map((line) => [line.item, line.count])), as: "kit.loaded" },
        { hard: false },
      ),
    },
    { id: "strike.ground", site: "staked", gate: gate(yes, { roles: COMPETENT }) },
  ];
}

/** Its tie released last, the line down in hand, and everybody counted out before the next. One that nobody went under for does not stand. */
function lowerCalls(brief: Brief, line: Line): StepDraft[] {
  const of = { params: lineParams(line), onlyAfter: `under.${line.id}` };
  const into = `strike.under.${line.id}`;
  return asOne(into, [
    { id: into, wordsKey: "under.in", work: "under", gate: countIn(brief), ...of },
    { id: `lower.${line.id}`, wordsKey: `lower.${line.kind}`, work: "lower", gate: countOut(into), ...of },
  ]);
}

/** Opposite sides together, each pair entered under conditions of its own; the corners hold the cloth until then. */
function sidePoles({ edges, stations }: TentPlan): StepDraft[] {
  const between = (name: EdgeName) => edges.find((e) => e.name === name)!.between.length;
  return [
    ...OPPOSITE.filter((pair) => pair.some((name) => between(name) > 0)).map(
      ([one, other]): StepDraft => ({
        id: `strike.sides.${one}`,
        wordsKey: "strike.sides.pair",
        work: "lower",
        params: { one, other, poles: between(one) + between(other) },
      }),
    ),
    {
      id: "strike.sides",
      work: "lower",
      params: { poles: CORNERS.length },
      gate: gate(exactly(stations.length), { roles: COMPETENT, reopenedBy: ["stations"] }),
    },
  ];
}

const OPPOSITE: readonly (readonly [EdgeName, EdgeName])[] = [
  ["AB", "CD"],
  ["BC", "DA"],
];

const cloth = (plan: TentPlan): StepDraft[] => [
  { id: STRIKE_FROM.cloth, wordsKey: plan.seams.length > 0 ? "strike.unlace" : "strike.lower", work: "openCloth" },
  // It secures loose cloth, so wind does not keep anybody from it; lightning does.
  { id: "strike.fold", work: "outside" },
];
