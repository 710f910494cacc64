import type { Brief } from "../../machines/install/brief.ts";
import type { EscapeId, PhaseId } from "../../machines/install/step.ts";
import type { TentPlan } from "../../machines/tent/types.ts";

/** One line of the issue. `{…}` in a gate's name stands for each of a kind that this tent has. */
export type Row = {
  readonly phase: PhaseId | EscapeId;
  readonly gate: string;
  readonly hard: boolean;
  /** The gate whose answer must be somebody else's. */
  readonly notBy?: string;
  /** Minutes until an answer is old. */
  readonly goodForMin?: number;
  /** Opened by a reading, never by hand. */
  readonly wind?: true;
  /** Which briefs ask it; all where not said. */
  readonly when?: (brief: Brief, plan: TentPlan) => boolean;
};

const seams = (_: Brief, plan: TentPlan) => plan.pieces.length > 1;
const soilUnknown = ({ site }: Brief) => !site.soilKnown;
/** The table of exits ends at 999 people and does not know what nobody knows. */
const tabled = ({ use }: Brief) => use.occupants !== null && use.occupants < 1000;

const row = (phase: Row["phase"], hard: boolean, gate: string, more: Partial<Row> = {}): Row => ({ phase, gate, hard, ...more });
const hard = (phase: Row["phase"], gate: string, more: Partial<Row> = {}) => row(phase, true, gate, more);
const soft = (phase: Row["phase"], gate: string) => row(phase, false, gate);
const gust = (phase: Row["phase"], gate: string) => hard(phase, gate, { wind: true, goodForMin: 10 });

/** Written by hand from issue 2, section 3, in its order; nothing here is read from the script. */
export const TABLE: readonly Row[] = [
  hard("utilitiesMarked", "sheet.atHand"),
  // Issue 4, part 4: a loading list that is ticked off, and the same list at the strike.
  soft("utilitiesMarked", "kit.loaded"),
  hard("utilitiesMarked", "talk.hazards"),
  hard("utilitiesMarked", "talk.stopSignal"),
  hard("utilitiesMarked", "talk.rallyPoint"),
  hard("utilitiesMarked", "talk.headcount"),
  hard("utilitiesMarked", "locate.ticket"),
  hard("utilitiesMarked", "locate.covers"),
  hard("utilitiesMarked", "locate.{utility}"),
  hard("utilitiesMarked", "marks.walked"),
  hard("utilitiesMarked", "private.irrigation"),
  hard("utilitiesMarked", "private.lighting"),
  hard("utilitiesMarked", "private.septic"),
  hard("utilitiesMarked", "overhead.{overheadLine}"),
  hard("utilitiesMarked", "white.stakeLine"),
  hard("utilitiesMarked", "nearest.{markedUtility}"),
  hard("utilitiesMarked", "nearest.private"),

  hard("anchorsSet", "squared"),
  hard("anchorsSet", "marked.{edge}"),
  hard("anchorsSet", "soil", { when: ({ site }) => site.soilKnown }),
  hard("anchorsSet", "stakes.kind"),
  hard("anchorsSet", "stakes.diameter"),
  hard("anchorsSet", "stakes.length"),
  hard("anchorsSet", "stakes.bent"),
  hard("anchorsSet", "drive.ticket"),
  hard("anchorsSet", "drive.protected"),
  hard("anchorsSet", "showing.{edge}"),
  hard("anchorsSet", "lean.{edge}"),
  hard("anchorsSet", "stakes.{stationGroup}"),
  hard("anchorsSet", "plates.{stationGroup}"),
  hard("anchorsSet", "straps.choked"),
  hard("anchorsSet", "pull.{edge}", { when: soilUnknown }),

  hard("sectionsJoined", "damage.cloth"),
  hard("sectionsJoined", "damage.rope"),
  hard("sectionsJoined", "groundCloth"),
  soft("sectionsJoined", "softSoles"),
  hard("sectionsJoined", "laid.order"),
  hard("sectionsJoined", "laid.looked", { notBy: "laid.order" }),
  hard("sectionsJoined", "rings.{edge}"),
  hard("sectionsJoined", "tied.{half}"),
  hard("sectionsJoined", "looked.{half}", { notBy: "tied.{half}" }),
  hard("sectionsJoined", "cloth.strapped"),

  gust("perimeterRaised", "sides.gust"),
  hard("perimeterRaised", "sides.warning", { goodForMin: 30 }),
  hard("perimeterRaised", "straps.threaded"),
  hard("perimeterRaised", "straps.turns"),
  hard("perimeterRaised", "straps.locked"),
  hard("perimeterRaised", "sides.laid"),
  hard("perimeterRaised", "pins.both"),
  hard("perimeterRaised", "sides.feet"),
  hard("perimeterRaised", "sides.notTight"),

  hard("interiorRaised", "hats"),
  hard("interiorRaised", "poles.pinned"),
  hard("interiorRaised", "plates.atMarks"),
  hard("interiorRaised", "under.caller"),
  hard("interiorRaised", "under.hands"),
  hard("interiorRaised", "under.wayOut"),
  gust("interiorRaised", "gust.{poleLine}"),
  hard("interiorRaised", "under.{poleLine}"),
  hard("interiorRaised", "feet.{poleLine}"),
  hard("interiorRaised", "out.{poleLine}", { notBy: "under.{poleLine}" }),
  hard("interiorRaised", "groundCloth.out"),

  hard("tensioned", "tension.plumb"),
  soft("tensioned", "plumb.{edge}"),
  hard("tensioned", "feet.onLine"),
  hard("tensioned", "interior.tied"),
  hard("tensioned", "seams.gaps", { when: seams }),
  hard("tensioned", "handles.locked"),
  hard("tensioned", "round.again"),

  hard("inspected", "walked.{edge}", { notBy: "round.again" }),
  hard("inspected", "tails.rolled"),
  hard("inspected", "stakes.capped"),
  hard("inspected", "exits"),
  hard("inspected", "exits.width", { when: tabled }),
  hard("inspected", "exits.signs", { when: ({ use }) => use.occupants === null || use.occupants >= 50 }),
  hard("inspected", "extinguishers"),
  hard("inspected", "permit", { when: ({ use }) => use.permit !== "notRequired" }),
  hard("inspected", "certificate", { when: ({ use }) => use.fabricCertificate !== "notRequired" }),
  hard("inspected", "walls", { when: ({ use }) => use.walls }),
  hard("inspected", "hung.loads", { when: ({ use }) => use.hungLoads }),
  hard("inspected", "hung.nothing", { when: ({ use }) => !use.hungLoads }),
  hard("inspected", "weather.plan"),
  hard("inspected", "handover"),

  hard("standing", "watch", { goodForMin: 24 * 60 }),
  hard("standing", "watch.end"),

  hard("struck", "strike.people"),
  hard("struck", "strike.power"),
  gust("struck", "strike.gust"),
  hard("struck", "strike.walls"),
  hard("struck", "strike.under"),
  hard("struck", "strike.out", { notBy: "strike.under" }),
  hard("struck", "strike.interiorDown"),
  hard("struck", "back.stakes"),
  soft("struck", "back.kit"),
  hard("struck", "strike.ground"),

  ...(["ground", "up", "standing"] as const).flatMap((route) => [
    hard(route, `safe.${route}.headcount`),
    gust(route, `safe.${route}.gust`),
    hard(route, `safe.${route}.looked`),
  ]),
];

/** What each kind in a name stands for, from what was ordered and what stands on the ground. */
const KINDS: Record<string, (brief: Brief, plan: TentPlan) => readonly string[]> = {
  utility: ({ ticket }) => ticket.utilities.map((u) => u.kind),
  markedUtility: ({ ticket }) => ticket.utilities.filter((u) => u.marked).map((u) => u.kind),
  overheadLine: ({ site }) => (site.overheadKv.length > 0 ? site.overheadKv.map((_, i) => `${i + 1}`) : ["1"]),
  edge: () => ["AB", "BC", "CD", "DA"],
  stationGroup: (_, plan) => [
    "corners",
    ...plan.edges.filter((e) => e.seamEnds > 0).map((e) => `seamEnds.${e.name}`),
    ...plan.edges.filter((e) => e.sides > 0).map((e) => `sides.${e.name}`),
  ],
  half: (_, plan) => plan.seams.flatMap((s) => s.halves.map((h) => h.id)),
  poleLine: (_, plan) => [
    ...plan.rows.filter((r) => r.quarters.length > 0).map((r) => `quarters.${r.id}`),
    ...plan.poles.filter((p) => p.kind === "center").map((p) => `center.${p.id}`),
    "upright",
  ],
};

/** The table for one tent: every gate by its whole name. */
export function tableFor(brief: Brief, plan: TentPlan): ReadonlyMap<string, Row> {
  const rows = TABLE.filter((r) => r.when?.(brief, plan) ?? true).flatMap((r): Row[] => {
    const kind = /\{(\w+)\}/.exec(r.gate);
    if (!kind) return [r];
    const [hole, name] = kind;
    return KINDS[name!]!(brief, plan).map((one) => ({
      ...r,
      gate: r.gate.replace(hole, one),
      ...(r.notBy ? { notBy: r.notBy.replace(hole, one) } : {}),
    }));
  });
  return new Map(rows.map((r) => [r.gate, r]));
}
