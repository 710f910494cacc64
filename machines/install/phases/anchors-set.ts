import { lengthFt } from "../../site/lengths.ts";
import { rightAngle, USUAL_TAPE_FT } from "../../site/right-angle.ts";
import { CORNERS, type Corner, type EdgePlan, type Point, type StationKind, type TentPlan } from "../../tent/types.ts";
import type { Brief } from "../brief.ts";
import { COMPETENT, exactly, gate, measure, noneOf, SHEET, yes } from "../gates.ts";
import type { Limits } from "../limits.ts";
import type { StepDraft } from "../step.ts";
import { inForce } from "./utilities-marked.ts";

/** Marks, then stakes: right kind, deep enough, not toward the tent, and as many as the plan says. */
export function anchorsSet({ sheet, site, ticket }: Brief, plan: TentPlan, limits: Limits): StepDraft[] {
  const { squareInPer50Ft, taping, maxShowingIn, stakeLeanDeg } = limits;
  const stakeOf = { kind: sheet.stakeKind, diameterIn: sheet.stakeDiameterIn, lengthIn: sheet.stakeLengthIn };
  return [
    { id: "baseline", params: { lengthFt: plan.edges[0]!.lengthFt } },
    ...firstCorner(plan),
    {
      id: "squared",
      params: { AC: lengthFt(marksOf(plan), "AC"), BD: lengthFt(marksOf(plan), "BD") },
      gate: gate(
        { kind: "lengths", want: marksOf(plan), inPer50Ft: squareInPer50Ft.is, taping: taping.is },
        { source: squareInPer50Ft.source, reopenedBy: ["stations"] },
      ),
    },
    ...plan.edges.map(
      (e): StepDraft => ({
        id: `marked.${e.name}`,
        wordsKey: "marked.edge",
        params: edgeOf(e),
        gate: gate(exactly(e.rings), { reopenedBy: ["stations"] }),
      }),
    ),
    { id: "kit.spread", params: { stakes: sum(plan, "stakes"), plates: sum(plan, "plates") } },
    {
      id: "soil",
      wordsKey: site.soilKnown ? "soil.named" : "soil.unknown",
      params: { soil: sheet.soil },
      ...(site.soilKnown ? { gate: gate(yes, { source: SHEET, roles: COMPETENT, reopenedBy: ["site", "sheet"] }) } : {}),
    },
    { id: "stakes.kind", params: stakeOf, gate: gate(yes, { source: SHEET, reopenedBy: ["sheet"] }) },
    {
      id: "stakes.diameter",
      params: stakeOf,
      gate: gate(measure("in", sheet.stakeDiameterIn, null), { source: SHEET, roles: COMPETENT, reopenedBy: ["sheet"], paper: "engineer" }),
    },
    {
      id: "stakes.length",
      params: stakeOf,
      gate: gate(measure("in", sheet.stakeLengthIn, null), { source: SHEET, roles: COMPETENT, reopenedBy: ["sheet"], paper: "engineer" }),
    },
    { id: "stakes.bent", gate: gate(noneOf, { reopenedBy: ["sheet"] }) },
    { id: "drive.ticket", params: { ticket: ticket.number }, gate: inForce(ticket) },
    { id: "drive.protected", gate: gate(yes) },
    ...plan.edges.flatMap((e): StepDraft[] => [
      { id: `drive.${e.name}`, wordsKey: "drive.edge", params: edgeOf(e) },
      {
        id: `showing.${e.name}`,
        wordsKey: "showing.edge",
        params: { ...edgeOf(e), mostIn: maxShowingIn.is },
        gate: gate(measure("in", 0, maxShowingIn.is), {
          source: maxShowingIn.source,
          roles: COMPETENT,
          reopenedBy: ["sheet", "anchors"],
          paper: "engineer",
        }),
      },
      {
        id: `lean.${e.name}`,
        wordsKey: "lean.stakes",
        params: { ...edgeOf(e), ...stakeLeanDeg.is },
        gate: gate(measure("deg", stakeLeanDeg.is.from, stakeLeanDeg.is.to), {
          source: stakeLeanDeg.source,
          roles: COMPETENT,
          reopenedBy: ["sheet", "anchors"],
          paper: "engineer",
        }),
      },
    ]),
    ...groups(plan).flatMap((g): StepDraft[] => [
      { id: `stakes.${g.id}`, wordsKey: "count.stakes", params: g, gate: gate(exactly(g.stakes), { reopenedBy: ["stations", "anchors"] }) },
      { id: `plates.${g.id}`, wordsKey: "count.plates", params: g, gate: gate(exactly(g.plates), { reopenedBy: ["stations", "anchors"] }) },
    ]),
    { id: "straps.choked", gate: gate(yes, { reopenedBy: ["stations", "anchors"] }) },
    ...(site.soilKnown ? [] : plan.edges.map((e): StepDraft => pullTest(e, sheet.pullTestLbf))),
  ];
}

/** Ground of unknown kind: at least one pull an edge, at the worst-looking stake. Without a figure on the sheet only an engineer's paper will do. */
const pullTest = (e: EdgePlan, lbf: number | null): StepDraft => ({
  id: `pull.${e.name}`,
  wordsKey: lbf === null ? "pull.noFigure" : "pull.test",
  params: { edge: e.name, lbf: lbf ?? "unknown" },
  gate: gate(lbf === null ? { kind: "paperOnly" } : measure("lbf", lbf, null), {
    source: SHEET,
    roles: COMPETENT,
    reopenedBy: ["site", "sheet", "anchors"],
    paper: "engineer",
  }),
});

const edgeOf = (e: EdgePlan) => ({ edge: e.name, stations: e.rings, lengthFt: e.lengthFt, between: e.between.length });

const sum = (plan: TentPlan, what: "stakes" | "plates") => plan.stations.reduce((n, s) => n + s[what], 0);

/** Stations counted together: the corners as one, then each edge's seam ends and sides. */
function groups(plan: TentPlan) {
  const group = (id: string, kind: StationKind, edge: string | null) => {
    const stations = plan.stations.filter((s) => s.kind === kind && (edge === null || s.edge === edge));
    return {
      id,
      kind,
      edge: edge ?? "all",
      stations: stations.length,
      stakes: stations.reduce((n, s) => n + s.stakes, 0),
      plates: stations.reduce((n, s) => n + s.plates, 0),
    };
  };
  const kinds = [
    ["seamEnds", "seamEnd"],
    ["sides", "side"],
  ] as const;
  const along = plan.edges.flatMap((e) => kinds.map(([id, kind]) => group(`${id}.${e.name}`, kind, e.name)));
  return [group("corners", "corner", null), ...along].filter((g) => g.stations > 0);
}

/** Where the edges are long enough for it, the first corner is squared before all four are measured. */
function firstCorner({ edges }: TentPlan): StepDraft[] {
  const along = edges.find((e) => e.name === "AB")!.lengthFt;
  const across = edges.find((e) => e.name === "DA")!.lengthFt;
  const square = rightAngle(along, across, USUAL_TAPE_FT);
  return square ? [{ id: "corner.first", params: square }] : [];
}

/** Where the corner marks are wanted: what cloth or site said otherwise is in it. */
const marksOf = (plan: TentPlan) =>
  Object.fromEntries(
    CORNERS.map((corner) => {
      const { xFt, yFt } = plan.stations.find((s) => s.id === corner)!;
      return [corner, { xFt, yFt }];
    }),
  ) as Record<Corner, Point>;
