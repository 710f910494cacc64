import { lengthFt } from "../../site/lengths.ts";
import { rightAngle, USUAL_TAPE_FT } from "../../site/right-angle.ts";
import { CORNERS, type Corner, type EdgePlan, type Point, type TentPlan } from "../../tent/types.ts";
import type { Brief } from "../brief.ts";
import { COMPETENT, exactlyEach, figures, type GateDraft, gate, measure, measures, noneOf, SHEET, unknownGate, yes } from "../gates.ts";
import type { Limits } from "../limits.ts";
import { replacedAt, replacedIn } from "../replaced.ts";
import type { StepDraft } from "../step.ts";
import { anchorsScreened } from "./anchors-screened.ts";
import { DRIVING, kitLines } from "./needs.ts";

/** Marks, then stakes: right kind, deep enough, not toward the tent, and as many as the plan says. */
export function anchorsSet(brief: Brief, plan: TentPlan, limits: Limits): StepDraft[] {
  const { before, after } = anchorsScreened(brief, plan);
  return [...marks(plan, limits), ...kit(brief, limits), ...before, ...stakes(brief, plan, limits), ...pulls(brief, plan), ...after];
}

function marks(plan: TentPlan, { squareInPer50Ft, taping }: Limits): StepDraft[] {
  return [
    { id: "baseline", work: "outside", params: { lengthFt: plan.edges[0]!.lengthFt } },
    ...firstCorner(plan),
    {
      id: "squared",
      work: "outside",
      params: { AC: lengthFt(marksOf(plan), "AC"), BD: lengthFt(marksOf(plan), "BD") },
      gate: gate(
        { kind: "lengths", want: marksOf(plan), inPer50Ft: squareInPer50Ft.is, taping: taping.is },
        { source: squareInPer50Ft.source, reopenedBy: ["stations"] },
      ),
    },
    {
      id: "marked",
      work: "outside",
      gate: gate(exactlyEach(Object.fromEntries(plan.edges.map((e) => [e.name, e.rings]))), { reopenedBy: ["stations"] }),
    },
  ];
}

function kit({ sheet, site }: Brief, limits: Limits): StepDraft[] {
  const bent: StepDraft = { id: "stakes.bent", gate: gate(noneOf, { reopenedBy: ["sheet"] }) };
  const dug = { id: "soil", wordsKey: site.soilKnown ? "soil.named" : "soil.unknown" };
  if (sheet === null) {
    const unknown = { wordsKey: "sheet.unknown", gate: unknownGate(["sheet"], { reopenedBy: ["sheet"] }) };
    return [{ id: "kit.spread", ...unknown }, { ...dug, ...(site.soilKnown ? unknown : {}) }, { id: "stakes.size", ...unknown }, bent];
  }
  const { stakeWearIn, stakeShortIn } = limits;
  const { stakeKind: kind, stakeDiameterIn: diameterIn, stakeLengthIn: lengthIn } = sheet;
  const size = figures("in", {
    thinnest: { from: diameterIn - stakeWearIn.is, to: null },
    shortest: { from: lengthIn - stakeShortIn.is, to: null },
  });
  return [
    { id: "kit.spread", params: { kind, diameterIn, lengthIn }, gate: gate(yes, { source: SHEET, reopenedBy: ["sheet"] }) },
    {
      ...dug,
      params: sheet.soil === null ? {} : { soil: sheet.soil },
      ...(site.soilKnown ? { gate: gate(yes, { source: SHEET, roles: COMPETENT, reopenedBy: ["site", "sheet", "rain"] }) } : {}),
    },
    { id: "stakes.size", gate: gate(size, { source: SHEET, roles: COMPETENT, reopenedBy: ["sheet"], paper: "engineer" }) },
    bent,
  ];
}

function stakes({ siteModel }: Brief, plan: TentPlan, { maxShowingIn, stakeLeanDeg }: Limits): StepDraft[] {
  const judged = { roles: COMPETENT, reopenedBy: ["sheet", "anchors"] as const, paper: "engineer" as const };
  const counted = { reopenedBy: ["stations", "anchors"] as const };
  const at = (id: string, of: { stakes: number; plates: number }, params: StepDraft["params"] = {}): StepDraft => ({
    id: `stakes.${id}`,
    wordsKey: id === "corners" ? "count.corners" : "count.edge",
    work: "outside",
    needs: kitLines("perimeterStake", "stakePlate"),
    params,
    gate: gate(exactlyEach({ stakes: of.stakes, plates: of.plates }), counted),
  });
  const group = (of: (s: TentPlan["stations"][number]) => boolean) => {
    const there = plan.stations.filter(of);
    return { stakes: there.reduce((n, s) => n + s.stakes, 0), plates: there.reduce((n, s) => n + s.plates, 0) };
  };
  const replaced = replacedIn(siteModel ?? {});
  const edgeAt = new Map(plan.stations.map(({ id, edge }): [string, string] => [id, edge]));
  /** What is not driven there: an engineer's anchor takes its place. */
  const except = ({ name }: EdgePlan): NonNullable<StepDraft["params"]> => {
    const codes = replacedAt(replaced, plan, (id) => edgeAt.get(id) === name);
    return codes === "" ? {} : { except: codes };
  };
  const driven = drivenEdges(plan);
  return [
    ...driven.map(
      (e): StepDraft => ({
        id: `drive.${e.name}`,
        wordsKey: "drive.edge",
        work: "driving",
        needs: [...kitLines("perimeterStake"), ...DRIVING],
        params: { ...edgeOf(e), ...except(e) },
        gate: gate(measure("in", 0, maxShowingIn.is), { ...judged, source: maxShowingIn.source }),
      }),
    ),
    { id: "lean.inward", work: "outside", gate: gate(noneOf, { ...judged, source: stakeLeanDeg.source }) },
    {
      id: "lean.outward",
      work: "outside",
      needs: kitLines("leanGauge"),
      gate: gate(
        measures(
          "deg",
          driven.map((e) => e.name),
          stakeLeanDeg.is.from,
          stakeLeanDeg.is.to,
        ),
        {
          ...judged,
          source: stakeLeanDeg.source,
        },
      ),
    },
    at(
      "corners",
      group((s) => s.kind === "corner"),
    ),
    ...plan.edges
      .filter((e) => e.between.length > 0)
      .map((e) =>
        at(
          e.name,
          group((s) => s.kind !== "corner" && s.edge === e.name),
          edgeOf(e),
        ),
      ),
    { id: "straps.choked", work: "outside", needs: kitLines("perimeterStrap", "stakePlate"), gate: gate(yes, counted) },
  ];
}

/**
 * Ground of unknown kind: at least one pull an edge, at the worst-looking stake, and one inside while the ground there is bare.
 * Without a figure on the sheet only an engineer's paper will do.
 */
function pulls({ sheet, site }: Brief, plan: TentPlan): StepDraft[] {
  if (site.soilKnown) return [];
  const lbf = sheet?.pullTestLbf ?? null;
  const words = lbf === null ? "noFigure" : "test";
  const held = (reopenedBy: GateDraft["reopenedBy"]): GateDraft =>
    gate(lbf === null ? { kind: "paperOnly" } : measure("lbf", lbf, null), {
      source: SHEET,
      roles: COMPETENT,
      reopenedBy,
      paper: "engineer",
    });
  const inside: StepDraft = {
    id: "pull.inside",
    wordsKey: `pull.inside.${words}`,
    work: "driving",
    needs: [...kitLines("interiorStake", "pullGauge", "comeAlong"), ...DRIVING],
    // While the ground is bare: later, cloth lies over it, and only the engineer's paper is left.
    gate: { ...held([]), past: true },
  };
  return [
    ...drivenEdges(plan).map(
      ({ name }): StepDraft => ({
        id: `pull.${name}`,
        wordsKey: `pull.${words}`,
        work: "outside",
        needs: kitLines("pullGauge", "comeAlong"),
        params: { edge: name, lbf: lbf ?? "unknown" },
        gate: held(["site", "sheet", "anchors"]),
      }),
    ),
    ...(plan.poles.length > 0 ? [inside] : []),
  ];
}

/** The edges that have a stake to drive: of one on engineers' anchors alone there is none. */
const drivenEdges = ({ edges, stations }: TentPlan): EdgePlan[] =>
  edges.filter(({ name }) => stations.some(({ edge, stakes }) => edge === name && stakes > 0));

const edgeOf = (e: EdgePlan) => ({ edge: e.name, stations: e.rings, lengthFt: e.lengthFt, between: e.between.length });

/** Where the edges are long enough for it, the first corner is squared before all four are measured. */
function firstCorner({ edges }: TentPlan): StepDraft[] {
  const along = edges.find((e) => e.name === "AB")!.lengthFt;
  const across = edges.find((e) => e.name === "DA")!.lengthFt;
  const square = rightAngle(along, across, USUAL_TAPE_FT);
  return square ? [{ id: "corner.first", work: "outside", params: square }] : [];
}

/** Where the corner marks are wanted: what cloth or site said otherwise is in it. */
const marksOf = (plan: TentPlan) =>
  Object.fromEntries(
    CORNERS.map((corner) => {
      const { xFt, yFt } = plan.stations.find((s) => s.id === corner)!;
      return [corner, { xFt, yFt }];
    }),
  ) as Record<Corner, Point>;
