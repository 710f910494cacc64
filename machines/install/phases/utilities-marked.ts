import type { SiteClearances } from "../../site/clearances.ts";
import { isOnBaseline, offsetOf } from "../../site/model.ts";
import type { TentPlan } from "../../tent/types.ts";
import type { Brief, Paperwork, Ticket } from "../brief.ts";
import { onSite } from "../crew.ts";
import { type FactName, knownOf, PLACES } from "../facts.ts";
import {
  type Aspect,
  BRIEF,
  COMPETENT,
  document,
  each,
  exactly,
  figures,
  gate,
  type Happening,
  measure,
  unknownGate,
  yes,
} from "../gates.ts";
import type { Limits } from "../limits.ts";
import { overheadLinesOf } from "../overhead-lines.ts";
import { placeOf, pointOf, siteClearances } from "../site-clearances.ts";
import type { StepDraft } from "../step.ts";
import { truckLoadOf } from "../truck-load.ts";
import { mayHaveLines } from "../utilities.ts";
import { enteredNear } from "./entered-near.ts";
import { forecastFirst } from "./forecast-calls.ts";
import { siteWorkedOut } from "./site-worked-out.ts";

const PRIVATE_LINES = ["irrigation", "lighting", "septic"] as const;

/** Papers, the talk, and an outline in white; then nothing goes into the ground until everybody who has a line there has answered. */
export function utilitiesMarked(brief: Brief, plan: TentPlan, limits: Limits): StepDraft[] {
  const worked = brief.siteModel ? siteClearances(plan, brief.siteModel, limits) : null;
  return [
    ...papers(brief, plan, limits),
    ...talk(brief, limits),
    ...corners(brief, plan),
    ...outline(plan),
    ...locates(brief),
    ...siteWorkedOut(brief, plan, worked),
    ...distances(brief, plan, limits, worked),
  ];
}

function papers(brief: Brief, plan: TentPlan, limits: Limits): StepDraft[] {
  const { sheet, use } = brief;
  const load = truckLoadOf(brief, plan, limits);
  const paper = (id: string, is: Paperwork): StepDraft[] =>
    is === "notRequired"
      ? []
      : [
          {
            id,
            wordsKey: is === "unknown" ? `${id}.unknown` : id,
            gate: gate(document(null), { reopenedBy: ["use"], paper: "fireOfficial" }),
          },
        ];
  return [
    {
      id: "sheet.atHand",
      ...(sheet === null
        ? { wordsKey: "sheet.unknown", gate: unknownGate(["sheet"], { reopenedBy: ["sheet"] }) }
        : {
            params: { document: sheet.document },
            gate: gate(document(sheet.document), { source: BRIEF, roles: COMPETENT, reopenedBy: ["sheet"] }),
          }),
    },
    ...forecastFirst(brief, limits),
    ...paper("permit", use.permit),
    ...paper("certificate", use.fabricCertificate),
    {
      id: "kit.loaded",
      params: { lines: load.length, things: load.reduce((sum, line) => sum + line.count, 0) },
      // Kept when the plan changes on the site: what was loaded was loaded, and is judged against what is wanted now.
      gate: gate({ kind: "counts", want: Object.fromEntries(load.map((line) => [line.item, line.count])), as: null }, { hard: false }),
    },
  ];
}

/** Good for a working day, for the crew that heard it. */
const forTheDay = ({ dayS }: Limits) => ({
  validForS: dayS.is,
  reopenedBy: ["crew", "strike", "clearing"] as const,
});

function talk({ crew, site }: Brief, limits: Limits): StepDraft[] {
  const { rallyPoint, stormShelter, firstAid, address } = site;
  const day = forTheDay(limits);
  const params = { ...knownOf({ rallyPoint, stormShelter, firstAid }), address };
  const missing = (...needed: readonly FactName[]) => PLACES.filter((place) => needed.includes(place) && site[place] === null);
  /** A call at which these places are told: nobody is told what nobody knows. */
  const told = (id: string, facts: readonly FactName[], call: Pick<StepDraft, "params" | "gate">): StepDraft => {
    const reopenedBy = call.gate?.reopenedBy ?? (["places"] as const);
    return facts.length === 0
      ? { id, ...call }
      : { id, wordsKey: "places.unknown", params, gate: unknownGate(facts, { validForS: call.gate?.validForS ?? null, reopenedBy }) };
  };
  return [
    { id: "talk.hazards" },
    { id: "talk.stopSignal" },
    told("talk.rallyPoint", missing("rallyPoint", "stormShelter"), { params: knownOf({ rallyPoint, stormShelter }) }),
    told("talk.firstAid", missing("firstAid"), { params: { ...knownOf({ firstAid }), address } }),
    told("talk.briefed", missing(...PLACES), {
      params,
      gate: gate(yes, { ...day, roles: COMPETENT, reopenedBy: [...day.reopenedBy, "places"] }),
    }),
    {
      id: "talk.headcount",
      gate: gate(exactly(onSite(crew).length), { ...day, source: BRIEF, roles: COMPETENT }),
    },
  ];
}

/** Where corners A and B go, off the baseline that the site was taped from; nothing where that is the tent's own A–B. */
function corners({ siteModel }: Brief, plan: TentPlan): StepDraft[] {
  if (!siteModel || isOnBaseline(siteModel)) return [];
  const place = placeOf(plan, siteModel);
  const call = (corner: "A" | "B", rest: Partial<StepDraft> = {}): StepDraft => {
    const { alongFt, offFt } = offsetOf(pointOf(plan, corner, place));
    // To the inch: the baseline, and squaring, set them to each other.
    return {
      id: `white.corner${corner}`,
      work: "outside",
      params: { corner, alongIn: Math.round(alongFt * 12), offIn: Math.round(offFt * 12) },
      ...rest,
    };
  };
  return [call("A"), call("B", { gate: gate(yes, { reopenedBy: ["stations"] }) })];
}

/** White paint and one tape, before any distance is measured from it; again where a corner moves. */
function outline({ spec, poles }: TentPlan): StepDraft[] {
  return [
    { id: "white.footprint", work: "outside", params: { inside: poles.length } },
    {
      id: "white.stakeLine",
      work: "outside",
      params: { setbackFt: spec.setbackFt },
      gate: gate(yes, { reopenedBy: ["stations", "poles", "corner"] }),
    },
  ];
}

/** What a changed neighbor asks again, where any was entered. */
const withNeighbors = ({ siteModel }: Brief, ...aspects: readonly (Aspect | Happening)[]): readonly (Aspect | Happening)[] =>
  siteModel ? [...aspects, "neighbors"] : aspects;

function locates(brief: Brief): StepDraft[] {
  const { ticket } = brief;
  const marked = ticket?.utilities.filter(mayHaveLines) ?? [];
  const unknown = { wordsKey: "ticket.unknown", gate: unknownGate(["ticket"], { reopenedBy: ["ticket"] }) };
  return [
    { id: "locate.ticket", ...(ticket === null ? unknown : { params: { ticket: ticket.number }, gate: inForce(ticket) }) },
    { id: "locate.covers", work: "outside", gate: gate(yes, { roles: COMPETENT, reopenedBy: ["ticket", "stations", "corner"] }) },
    {
      id: "locate.answers",
      // Of no utilities all have answered.
      ...(ticket === null
        ? unknown
        : { gate: gate(each(ticket.utilities.map((u) => u.kind)), { roles: COMPETENT, reopenedBy: ["ticket"] }) }),
    },
    {
      id: "marks.walked",
      work: "outside",
      params: { marked: marked.length },
      gate: gate(yes, { reopenedBy: withNeighbors(brief, "ticket", "stations") }),
    },
    { id: "private.lines", gate: gate(each(PRIVATE_LINES), { roles: COMPETENT, reopenedBy: ["site"] }) },
  ];
}

function distances(brief: Brief, plan: TentPlan, limits: Limits, worked: SiteClearances | null): StepDraft[] {
  const { ticket } = brief;
  const { is: toleranceIn, source: nearest } = limits.toleranceIn;
  const marked = (ticket?.utilities ?? []).filter(mayHaveLines).map(({ kind }) => kind);
  const entered = enteredNear(worked, plan);
  const others = entered.of((kind) => !marked.some((one) => one === kind));
  return [
    ...overhead(brief, plan, limits),
    ...marked.map((kind): StepDraft => {
      const { params, neededIn, ownZoneIn } = entered.of((one) => one === kind);
      return {
        id: `nearest.${kind}`,
        wordsKey: "nearest.mark",
        work: "outside",
        params: { utility: kind, ...params },
        gate: gate(measure("in", Math.max(toleranceIn, neededIn), null), {
          source: ownZoneIn > toleranceIn ? BRIEF : nearest,
          roles: COMPETENT,
          reopenedBy: withNeighbors(brief, "ticket", "stations", "anchors", "poles", "corner"),
          paper: "utilityOwner",
        }),
      };
    }),
    {
      id: "nearest.private",
      ...(others.any ? { wordsKey: "nearest.entered", params: others.params } : {}),
      work: "outside",
      // Where one was entered, "none" is no answer.
      gate: gate(measure("in", Math.max(toleranceIn, others.neededIn), null, !others.any), {
        source: others.ownZoneIn > toleranceIn ? BRIEF : nearest,
        roles: COMPETENT,
        reopenedBy: withNeighbors(brief, "site", "stations", "anchors", "poles", "corner"),
        paper: "siteOwner",
      }),
    },
    {
      id: "clear.around",
      work: "outside",
      gate: gate(measure("ft", limits.separationFt.is, null, true), {
        source: limits.separationFt.source,
        roles: COMPETENT,
        reopenedBy: withNeighbors(brief, "site", "stations", "corner"),
        paper: "fireOfficial",
      }),
    },
  ];
}

/**
 * So that a falling pole cannot reach. Of a line that was entered the nearest side pole and the nearest inside pole are taped, each
 * against its own length, as it was worked out; of any other the nearest pole, as if it were the longest. Which are nearest the crew
 * sees: nothing here rests on where the line was entered. Off the published table, only the line's owner opens it.
 */
function overhead(brief: Brief, { spec, poles }: TentPlan, { overheadFt }: Limits): StepDraft[] {
  const lines = overheadLinesOf(brief);
  const listed = lines.length > 0;
  const { centerPoleFt: poleFt, sidePoleFt } = spec;
  return (listed ? lines : [{ name: null, kv: null }]).map(({ name, kv }, i): StepDraft => {
    const clearFt = overheadFt.is[i] ?? null;
    const opened = { source: overheadFt.source, roles: COMPETENT, paper: "lineOwner" as const };
    const isTwo = name !== null && clearFt !== null && poles.length > 0;
    const far = (ft: number) => ({ from: ft + (clearFt ?? 0), to: null });
    const check = isTwo
      ? figures("ft", { sidePole: far(sidePoleFt), insidePole: far(poleFt) })
      : measure("ft", poleFt + (clearFt ?? 0), null, !listed);
    return {
      id: `overhead.${i + 1}`,
      wordsKey: isTwo ? "overhead.wire" : listed ? "overhead.line" : "overhead.any",
      work: "outside",
      params: { line: i + 1, kv: kv ?? "unknown", poleFt, clearFt: clearFt ?? "unknown", ...(name === null ? {} : { name }) },
      gate:
        clearFt === null
          ? gate({ kind: "paperOnly" }, { ...opened, reopenedBy: withNeighbors(brief, "site") })
          : gate(check, { ...opened, reopenedBy: withNeighbors(brief, "site", "poles", "stations", "corner") }),
    };
  });
}

/** The ticket in hand and in force at this moment: asked when the marks are checked, and again whenever stakes are driven. */
const inForce = (ticket: Ticket) =>
  gate(
    { kind: "document", expected: ticket.number, validFrom: ticket.validFrom, validTo: ticket.validTo },
    {
      source: { title: "The locate ticket's own dates; local one-call law governs", section: "start and expiry" },
      roles: COMPETENT,
      reopenedBy: ["ticket"],
    },
  );
