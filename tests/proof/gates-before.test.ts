import { describe, expect, it } from "vitest";
import { CONDITIONS, TABLE } from "./gates.table.ts";

/** Where each hard gate of the longer procedure before is now: under which gate or condition, and how, where that is not plain. */
const WHERE: readonly (readonly [before: string, now: string, how?: string])[] = [
  ["sheet.atHand", "sheet.atHand"],
  ["talk.hazards", "talk.briefed", "the talk's calls say it, and one answer is for all that was heard"],
  ["talk.stopSignal", "talk.briefed"],
  ["talk.rallyPoint", "talk.briefed"],
  ["talk.headcount", "talk.headcount"],
  ["locate.ticket", "locate.ticket"],
  ["locate.covers", "locate.covers"],
  ["locate.{utility}", "locate.answers", "a list: every utility is named and answered"],
  ["marks.walked", "marks.walked"],
  ["private.irrigation", "private.lines", "a list"],
  ["private.lighting", "private.lines"],
  ["private.septic", "private.lines"],
  ["overhead.{overheadLine}", "overhead.{overheadLine}"],
  ["white.stakeLine", "white.stakeLine"],
  ["nearest.{markedUtility}", "nearest.{markedUtility}"],
  ["nearest.private", "nearest.private"],

  ["squared", "squared"],
  ["marked.{edge}", "marked", "four counts in one answer"],
  ["soil", "soil"],
  ["stakes.kind", "kit.spread"],
  ["stakes.diameter", "stakes.size", "two measures in one answer"],
  ["stakes.length", "stakes.size"],
  ["stakes.bent", "stakes.bent"],
  ["drive.ticket", "locate.ticket", "a condition of every stake, inside ones too; the marks still there are `paint`"],
  ["drive.ticket", "paint"],
  ["drive.protected", "earsAndEyes"],
  ["showing.{edge}", "drive.{edge}", "asked at the call that drives them"],
  ["lean.{edge}", "lean.inward", "none toward the tent, and the most away on each edge"],
  ["lean.{edge}", "lean.outward"],
  ["stakes.{stationGroup}", "stakes.corners", "corners, then each edge: stakes and plates in one answer"],
  ["stakes.{stationGroup}", "stakes.{edge}"],
  ["plates.{stationGroup}", "stakes.corners"],
  ["plates.{stationGroup}", "stakes.{edge}"],
  ["straps.choked", "straps.choked"],
  ["pull.{edge}", "pull.{edge}"],

  ["damage.cloth", "damage", "panels, rings, webs and ropes, as they are opened"],
  ["damage.rope", "damage"],
  ["groundCloth", "groundCloth"],
  ["laid.order", "laid.order"],
  ["laid.looked", "laid.looked"],
  ["rings.{edge}", "rings", "four counts in one answer"],
  ["tied.{half}", "tied.{half}"],
  ["looked.{half}", "looked.{half}"],
  ["cloth.strapped", "cloth.strapped"],

  ["sides.gust", "wind.lift", "a condition of every lift"],
  ["sides.warning", "warning", "a condition of cloth, lifts, lowering, going under and letting people in"],
  ["straps.threaded", "straps.threaded"],
  ["straps.turns", "straps.turns", "after the poles stand, when straps are pulled through"],
  ["straps.locked", "straps.locked"],
  ["sides.laid", "sides.laid"],
  ["pins.both", "pins.both"],
  ["sides.feet", "sides.feet"],
  ["sides.notTight", "sides.notTight"],

  ["hats", "hats", "a condition, once a session"],
  ["poles.pinned", "poles.pinned"],
  ["plates.atMarks", "lift.{poleLine}", "each line carries its own plates in: nobody crawls under the whole cloth for them"],
  ["under.caller", "caller", "a condition, once a session"],
  ["under.hands", "under.hands", "a number now, and again for the strike"],
  ["under.wayOut", "wayOut", "a condition, once a session"],
  ["gust.{poleLine}", "wind.lift"],
  ["under.{poleLine}", "under.{poleLine}"],
  ["feet.{poleLine}", "lift.{poleLine}", "the gate of the lift itself"],
  ["out.{poleLine}", "out.{poleLine}"],
  ["groundCloth.out", "groundCloth.out"],

  ["tension.plumb", "tension.plumb"],
  ["feet.onLine", "feet.onLine"],
  ["interior.tied", "tied.{poleLine}", "line by line, before the count out, with the depth of its stakes"],
  ["seams.gaps", "seams.gaps"],
  ["handles.locked", "handles.locked"],
  ["round.again", "round.again"],

  ["walked.{edge}", "walked", "four counts in one answer"],
  ["tails.rolled", "trips", "tails rolled and stakes capped"],
  ["stakes.capped", "trips"],
  ["exits", "exits"],
  ["exits.width", "exits.width"],
  ["exits.signs", "exits.signs"],
  ["extinguishers", "extinguishers"],
  ["permit", "permit", "before the first stake"],
  ["certificate", "certificate"],
  ["walls", "walls"],
  ["hung.loads", "hung.loads"],
  ["hung.nothing", "hung.nothing"],
  ["weather.plan", "plan.evacuate", "with its mph, and a condition of letting people in"],
  ["weather.plan", "plan.walls"],
  ["handover", "handover"],

  ["watch", "watch"],
  ["watch.end", "watch.end"],

  ["strike.people", "strike.people"],
  ["strike.power", "strike.power"],
  ["strike.gust", "wind.lower", "a condition of every lowering"],
  ["strike.walls", "strike.walls"],
  ["strike.under", "strike.under.{poleLine}", "line by line"],
  ["strike.out", "lower.{poleLine}", "line by line, asked at the call that lowers it"],
  ["strike.interiorDown", "strike.interiorDown"],
  ["back.stakes", "back.stakes"],
  ["strike.ground", "strike.ground"],

  ...(["ground", "up", "standing"] as const).flatMap((way): (readonly [string, string, string?])[] => [
    [`safe.${way}.headcount`, `safe.${way}.headcount`],
    [`safe.${way}.gust`, "wind.lift", "the work that is gone on with asks for its own wind"],
    [`safe.${way}.looked`, `safe.${way}.looked`, "by somebody else than who counted"],
  ]),
];

/** Every hard gate of the procedure before, by its name. */
const BEFORE = [...new Set(WHERE.map(([before]) => before))];

describe("every hard gate of the longer procedure", () => {
  const hard = new Set([...TABLE.filter((row) => row.hard).map((row) => row.gate), ...CONDITIONS.map((c) => c.gate)]);
  it.each(BEFORE)("%s is still asked, and as hard", (gate) => {
    const now = WHERE.filter(([before]) => before === gate).map(([, is]) => is);
    expect(now.filter((is) => !hard.has(is))).toEqual([]);
  });
  it("is in this list: 100 of them", () => expect(BEFORE).toHaveLength(100));
});
