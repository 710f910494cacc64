import type { Brief } from "../../machines/install/brief.ts";
import type { EscapeId, PhaseId, Work } from "../../machines/install/step.ts";
import type { TentPlan } from "../../machines/tent/types.ts";

/** One gate. `{…}` in its name stands for each of a kind that this tent has. */
export type Row = {
  readonly phase: PhaseId | EscapeId;
  readonly gate: string;
  readonly hard: boolean;
  /** The gate whose answer must be somebody else's. */
  readonly notBy?: string;
  /** Minutes until an answer is old. */
  readonly goodForMin?: number;
  /** An answer from before this long after another's is asked again then. */
  readonly recheck?: { readonly after: string; readonly min: number };
  /** Which briefs ask it; all where not said. */
  readonly when?: (brief: Brief, plan: TentPlan) => boolean;
};

const seams = (_: Brief, plan: TentPlan) => plan.pieces.length > 1;
const soilKnown = ({ site }: Brief) => site.soilKnown;
const walls = ({ use }: Brief) => use.walls;
const planned = ({ weatherPlan }: Brief) => weatherPlan !== undefined;
/** Pulls were told: what rests on them may have to be pulled on again. */
const pulledBefore = ({ anchorage }: Brief) => (anchorage?.pulls.length ?? 0) > 0;
const tiesAtTheEnd = ({ sheet }: Brief, plan: TentPlan) => sheet?.interiorTies === "afterAll" && plan.poles.length > 0;
/** The table of exits ends at 999 people and does not know what nobody knows. */
const tabled = ({ use }: Brief) => use.occupants !== null && use.occupants < 1000;

/** Lines and things that a fixture puts where they are too near say so in their names. */
const isTooNear = ({ id }: { readonly id: string }) => id.startsWith("too near");

const row = (phase: Row["phase"], hard: boolean, gate: string, more: Partial<Row> = {}): Row => ({ phase, gate, hard, ...more });
const hard = (phase: Row["phase"], gate: string, more: Partial<Row> = {}) => row(phase, true, gate, more);
const soft = (phase: Row["phase"], gate: string) => row(phase, false, gate);

const WORKING_DAY = 14 * 60;

/** Written by hand from what the trade wants, in its order; nothing here is read from the script. */
export const TABLE: readonly Row[] = [
  hard("utilitiesMarked", "sheet.atHand"),
  hard("utilitiesMarked", "forecast.over", { when: ({ forecast }) => (forecast?.gustMph ?? 0) >= 25 }),
  hard("utilitiesMarked", "permit", { when: ({ use }) => use.permit !== "notRequired" }),
  hard("utilitiesMarked", "certificate", { when: ({ use }) => use.fabricCertificate !== "notRequired" }),
  soft("utilitiesMarked", "kit.loaded"),
  // Told to nobody before somebody knows it.
  hard("utilitiesMarked", "talk.rallyPoint", { when: ({ site }) => site.rallyPoint === null || site.stormShelter === null }),
  hard("utilitiesMarked", "talk.firstAid", { when: ({ site }) => site.firstAid === null }),
  hard("utilitiesMarked", "talk.briefed", { goodForMin: WORKING_DAY }),
  hard("utilitiesMarked", "talk.headcount", { goodForMin: WORKING_DAY }),
  hard("utilitiesMarked", "white.cornerB", { when: ({ siteModel }) => (siteModel?.wanted ?? null) !== null }),
  hard("utilitiesMarked", "white.stakeLine"),
  hard("utilitiesMarked", "locate.ticket"),
  hard("utilitiesMarked", "locate.covers"),
  hard("utilitiesMarked", "locate.answers"),
  hard("utilitiesMarked", "marks.walked"),
  hard("utilitiesMarked", "private.lines"),
  // Worked out, where a fixture has something on its site that is called so: only a change of the plan takes them away.
  hard("utilitiesMarked", "site.stakes", { when: ({ siteModel }) => siteModel?.buried.some(isTooNear) ?? false }),
  hard("utilitiesMarked", "site.poles", { when: ({ siteModel }) => siteModel?.overhead.some(isTooNear) ?? false }),
  hard("utilitiesMarked", "site.cloth", { when: ({ siteModel }) => siteModel?.things.some(isTooNear) ?? false }),
  hard("utilitiesMarked", "site.ticket", { when: ({ siteModel }) => (siteModel?.ticketArea ?? null) !== null }),
  hard("utilitiesMarked", "anchor.exposed.{engineeredAnchor}"),
  hard("utilitiesMarked", "anchor.paper.{engineeredAnchor}"),
  hard("utilitiesMarked", "overhead.{overheadLine}"),
  hard("utilitiesMarked", "nearest.{markedUtility}"),
  hard("utilitiesMarked", "nearest.private"),
  hard("utilitiesMarked", "clear.around"),

  hard("anchorsSet", "squared"),
  hard("anchorsSet", "marked"),
  hard("anchorsSet", "kit.spread"),
  hard("anchorsSet", "soil", { when: soilKnown }),
  hard("anchorsSet", "stakes.size"),
  hard("anchorsSet", "stakes.bent"),
  hard("anchorsSet", "drive.{edge}"),
  hard("anchorsSet", "lean.inward"),
  hard("anchorsSet", "lean.outward"),
  hard("anchorsSet", "stakes.corners"),
  hard("anchorsSet", "stakes.{edge}"),
  hard("anchorsSet", "straps.choked"),
  hard("anchorsSet", "pull.{edge}", { when: (brief) => !soilKnown(brief) }),
  hard("anchorsSet", "pull.inside", { when: (brief) => !soilKnown(brief) }),
  hard("anchorsSet", "anchors.pulled", { when: pulledBefore }),

  hard("sectionsJoined", "groundCloth"),
  hard("sectionsJoined", "cloth.strapped"),
  hard("sectionsJoined", "damage"),
  hard("sectionsJoined", "laid.order"),
  hard("sectionsJoined", "laid.looked", { notBy: "laid.order" }),
  hard("sectionsJoined", "rings"),
  hard("sectionsJoined", "tied.{half}"),
  hard("sectionsJoined", "looked.{half}", { notBy: "tied.{half}" }),

  hard("perimeterRaised", "straps.threaded"),
  hard("perimeterRaised", "sides.laid"),
  hard("perimeterRaised", "sides.feet"),
  hard("perimeterRaised", "pins.both"),
  hard("perimeterRaised", "straps.turns"),
  hard("perimeterRaised", "straps.locked"),
  hard("perimeterRaised", "sides.notTight"),

  hard("interiorRaised", "poles.pinned"),
  hard("interiorRaised", "under.hands"),
  hard("interiorRaised", "under.{poleLine}"),
  hard("interiorRaised", "lift.{poleLine}"),
  hard("interiorRaised", "out.{poleLine}", { notBy: "under.{poleLine}" }),
  hard("interiorRaised", "tied.{poleLine}"),
  hard("interiorRaised", "under.ties", { when: tiesAtTheEnd }),
  hard("interiorRaised", "out.ties", { notBy: "under.ties", when: tiesAtTheEnd }),
  hard("interiorRaised", "groundCloth.out"),

  hard("tensioned", "tension.plumb"),
  soft("tensioned", "plumb"),
  hard("tensioned", "feet.onLine"),
  hard("tensioned", "seams.gaps", { when: seams }),
  hard("tensioned", "handles.locked"),
  hard("tensioned", "round.again"),

  hard("inspected", "walked", { notBy: "round.again" }),
  hard("inspected", "trips"),
  hard("inspected", "walls", { when: walls }),
  hard("inspected", "exits"),
  hard("inspected", "exits.width", { when: tabled }),
  hard("inspected", "exits.signs", { when: ({ use }) => use.occupants === null || use.occupants >= 50 }),
  hard("inspected", "extinguishers"),
  hard("inspected", "fire"),
  hard("inspected", "hung.loads", { when: ({ use }) => use.hungLoads }),
  hard("inspected", "hung.nothing", { when: ({ use }) => !use.hungLoads }),
  hard("inspected", "plan.evacuate"),
  hard("inspected", "plan.walls", { when: walls }),
  hard("inspected", "forecast.fresh", { when: ({ forecast, weatherPlan }) => (forecast ?? weatherPlan) !== undefined }),
  hard("inspected", "forecast.clearBy", { when: ({ forecast }) => (forecast?.clearBy ?? null) !== null }),
  hard("inspected", "storm.plan", { when: planned }),
  hard("inspected", "storm.agreed", { notBy: "storm.plan", when: planned }),
  hard("inspected", "night.watch"),
  hard("inspected", "handover"),

  hard("standing", "tension.again", { recheck: { after: "round.again", min: 60 } }),
  hard("standing", "watch", { goodForMin: 24 * 60 }),
  hard("standing", "watch.end"),

  hard("struck", "strike.people"),
  hard("struck", "strike.power"),
  hard("struck", "strike.walls", { when: walls }),
  hard("struck", "strike.under.{poleLine}"),
  hard("struck", "lower.{poleLine}", { notBy: "strike.under.{poleLine}" }),
  hard("struck", "strike.interiorDown"),
  hard("struck", "strike.sides"),
  hard("struck", "back.stakes"),
  soft("struck", "back.kit"),
  hard("struck", "strike.ground"),

  ...(["ground", "up", "standing"] as const).flatMap((route) => [
    hard(route, `safe.${route}.headcount`),
    hard(route, `safe.${route}.looked`, { notBy: `safe.${route}.headcount` }),
  ]),
];

/** What work needs for as long as it lasts. `below` is a gust in mph, opened by a reading; `session` lapses after two silent hours. */
export type ConditionRow = {
  readonly gate: string;
  readonly over: readonly Work[];
  /** Nothing is driven in a strike. */
  readonly notIn?: "struck";
  readonly goodForMin?: number;
  readonly session?: true;
  /** Asked only once it has blown, or rained. */
  readonly dormant?: true;
  readonly below?: number;
  /** The gate at which a lower one was agreed. */
  readonly agreed?: string;
  /** Which briefs ask it; all where not said. */
  readonly when?: (brief: Brief) => boolean;
};
const ALL: readonly Work[] = ["driving", "openCloth", "lift", "under", "ease", "lower", "use", "outside"];
const ALOFT: readonly Work[] = ["lift", "under", "ease", "lower"];
const STAKES: readonly Work[] = ["driving", "under"];

/** The table of conditions, by hand. */
export const CONDITIONS: readonly ConditionRow[] = [
  { gate: "thunder", over: ALL },
  { gate: "warning", over: ["openCloth", ...ALOFT, "use"], goodForMin: 60 },
  { gate: "talk.briefed", over: ALL, goodForMin: WORKING_DAY },
  { gate: "talk.headcount", over: ALL, goodForMin: WORKING_DAY },
  { gate: "locate.ticket", over: STAKES, notIn: "struck" },
  { gate: "paint", over: ["driving"], goodForMin: WORKING_DAY },
  { gate: "earsAndEyes", over: STAKES, notIn: "struck", goodForMin: WORKING_DAY, session: true },
  { gate: "hats", over: ALOFT, goodForMin: WORKING_DAY, session: true },
  { gate: "caller", over: ALOFT, goodForMin: WORKING_DAY, session: true },
  { gate: "wayOut", over: ALOFT, goodForMin: WORKING_DAY, session: true },
  { gate: "under.hands", over: ["under"] },
  { gate: "plan.evacuate", over: ["use"] },
  { gate: "wind.cloth", over: ["openCloth"], below: 20, goodForMin: 30 },
  { gate: "wind.lift", over: ["lift", "under", "ease"], below: 20, goodForMin: 10 },
  { gate: "wind.lower", over: ["lower"], below: 25, goodForMin: 10 },
  { gate: "wind.use", over: ["use"], below: 25, goodForMin: 30, agreed: "plan.evacuate" },
  { gate: "survey", over: ["use"], dormant: true, when: planned },
  { gate: "afterBlow", over: ["openCloth", ...ALOFT], dormant: true },
];
/** The conditions of one job. */
export const conditionsFor = (brief: Brief): readonly ConditionRow[] => CONDITIONS.filter(({ when }) => when?.(brief) ?? true);

/** What kind of work each call is, by hand. Calls that match nothing are none: talk, papers, counts, finishing, making safe. */
export const WORK: readonly (readonly [RegExp, Work])[] = [
  [/^(?:drive\.\w\w|pull\.inside)$/, "driving"],
  [/^(?:groundCloth(?:\.out)?|lay\..+|damage|laid\.\w+|rings|lace\..+|tied\.(?:R-|S\d).+|looked\..+)$/, "openCloth"],
  [/^(?:straps\.threaded|sides\.laid|walls|strike\.unlace)$/, "openCloth"],
  [/^(?:raise|lift)\..+$/, "lift"],
  [/^(?:(?:strike\.)?under\.(?:quarters|center)\..+|under\.ties)$/, "under"],
  [/^strike\.ease$/, "ease"],
  [/^(?:lower\..+|strike\.(?:power|walls|sides(?:\.\w\w)?))$/, "lower"],
  [/^(?:open|watch)$/, "use"],
  [/^(?:white\.\w+|locate\.covers|marks\.walked|site\.\w+|anchor\.exposed\..+|overhead\.\d|nearest\.\w+|clear\.around)$/, "outside"],
  [/^(?:baseline|corner\.first|squared|marked|lean\.\w+|stakes\.(?:corners|\w\w)|straps\.choked|pull\.\w\w|anchors\.pulled)$/, "outside"],
  [/^(?:tension\.\w+|plumb|feet\.onLine|seams\.gaps|handles\.locked|round\.again|walked)$/, "outside"],
  [/^(?:cloth\.strapped|strike\.(?:fold|stakes))$/, "outside"],
];

/** What each kind in a name stands for, from what was ordered and what stands on the ground. */
const KINDS: Record<string, (brief: Brief, plan: TentPlan) => readonly string[]> = {
  markedUtility: ({ ticket }) => (ticket?.utilities ?? []).filter((u) => u.marked).map((u) => u.kind),
  overheadLine: ({ site }) => (site.overheadKv.length > 0 ? site.overheadKv.map((_, i) => `${i + 1}`) : ["1"]),
  engineeredAnchor: ({ siteModel }) =>
    (siteModel?.fixes ?? []).flatMap((fix) =>
      fix.is !== "engineeredAnchor" ? [] : [fix.stake.is === "plate" ? `${fix.stake.station}.${fix.stake.plate}` : fix.stake.pole],
    ),
  edge: () => ["AB", "BC", "CD", "DA"],
  half: (_, plan) => plan.seams.flatMap((s) => s.halves.map((h) => h.id)),
  poleLine: (_, plan) => [
    ...plan.rows.filter((r) => r.quarters.length > 0).map((r) => `quarters.${r.id}`),
    ...plan.poles.filter((p) => p.kind === "center").map((p) => `center.${p.id}`),
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
