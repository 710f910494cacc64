import type { Step } from "../install/step.ts";
import { own } from "../lookup/own.ts";
import { type Corner, EDGES, type EdgeName, type TentPlan } from "../tent/types.ts";
import {
  abreast,
  cornerMarks,
  edgeMarks,
  type HalfWay,
  halfMarks,
  inPairs,
  type Mark,
  pieceMarks,
  poleMarks,
  stakeLineMarks,
} from "./mark.ts";

/** What a call's place is worked out from: its values, the plan, and the call that a making safe broke off. */
export type Place = { readonly params: Step["params"]; readonly plan: TentPlan; readonly brokenOff: Step | null };

/** Where a call is done; empty where the plan has no place for it. */
type Where = (of: Place) => readonly Mark[];

const nowhere: Where = () => [];
const ground: Where = () => [{ is: "ground" }];
const edges: Where = () => edgeMarks();
const stakes: Where = () => stakeLineMarks();
const corners: Where = () => cornerMarks();
const pieces: Where = ({ plan }) => pieceMarks(plan);
const poles: Where = ({ plan }) => poleMarks(plan);
/** Strap by strap on opposite sides at once. */
const stakesAbreast: Where = () => abreast(stakeLineMarks());
const roundAbreast: Where = ({ plan }) => [...abreast(stakeLineMarks()), ...poleMarks(plan)];
/** White paint lies there: on the stake line and at the inside dots. */
const painted: Where = ({ plan }) => [...stakeLineMarks(), ...poleMarks(plan)];
const edge: Where = ({ params }) => edgeMarks([params.edge as EdgeName]);
const stakeLine: Where = ({ params }) => stakeLineMarks([params.edge as EdgeName]);
const corner: Where = ({ params }) => [{ is: "corner", corner: params.corner as Corner }];
const half =
  (way: HalfWay): Where =>
  ({ params }) => [{ is: "half", id: String(params.half), way }];
/** A line of poles; all of them where a call names none. */
const line: Where = ({ params, plan }) =>
  params.poles === undefined ? poleMarks(plan) : [{ is: "poles", ids: String(params.poles).split(" ") }];
const stationsOf =
  (...kinds: TentPlan["stations"][number]["kind"][]): Where =>
  ({ plan }) =>
    plan.stations
      .filter((s) => kinds.includes(s.kind))
      .map(({ id, kind }): Mark => {
        return kind === "corner" ? { is: "corner", corner: id as Corner } : { is: "station", id };
      });
/** Stations and poles that a call names by their codes: `A.2` is at A. */
const namedPlaces: Where = ({ params, plan }) =>
  String(params.of ?? params.stake ?? "")
    .split(" ")
    .flatMap((code): readonly Mark[] => {
      const id = code.split(".")[0]!;
      const station = plan.stations.find((s) => s.id === id);
      if (station) return [station.kind === "corner" ? { is: "corner", corner: id as Corner } : { is: "station", id }];
      return plan.poles.some((pole) => pole.id === id) ? [{ is: "poles", ids: [id] }] : [];
    });
/** The edges that the wind comes at, where it is known; else all of them. */
const windwardFirst: Where = ({ params }) => edgeMarks(windwardIn(params) ?? EDGES);
const windwardLast: Where = ({ params }) => edgeMarks(EDGES.filter((e) => !windwardIn(params)?.includes(e)));

/** The edges that the wind comes at, as a call names them. */
export const windwardIn = (params: Step["params"]): EdgeName[] | null =>
  params.windward === undefined ? null : (String(params.windward).split(" ") as EdgeName[]);

/** Where each call is done, by its words: every call, way out and condition has its line here. */
const PLACES: Readonly<Record<string, Where>> = {
  // Papers, the truck, the talk.
  "sheet.atHand": nowhere,
  "forecast.over": nowhere,
  "forecast.raising": nowhere,
  "sheet.unknown": nowhere,
  "places.unknown": nowhere,
  "ticket.unknown": nowhere,
  permit: nowhere,
  "permit.unknown": nowhere,
  certificate: nowhere,
  "certificate.unknown": nowhere,
  "kit.loaded": nowhere,
  "talk.hazards": nowhere,
  "talk.stopSignal": nowhere,
  "talk.rallyPoint": nowhere,
  "talk.firstAid": nowhere,
  "talk.briefed": nowhere,
  "talk.headcount": nowhere,

  // White paint, the ticket, distances.
  "white.cornerA": () => [{ is: "corner", corner: "A" }],
  "white.cornerB": () => [
    { is: "corner", corner: "A" },
    { is: "corner", corner: "B" },
  ],
  "white.footprint": ({ plan }) => [...edgeMarks(), ...poleMarks(plan)],
  "white.stakeLine": () => [...stakeLineMarks(), { is: "setback" }],
  "locate.ticket": nowhere,
  "locate.covers": stakes,
  "locate.answers": nowhere,
  "marks.walked": () => [...stakeLineMarks(), { is: "ground" }],
  "private.lines": nowhere,
  "overhead.line": nowhere,
  "overhead.wire": nowhere,
  "overhead.any": nowhere,
  "nearest.mark": painted,
  "nearest.private": painted,
  "nearest.entered": painted,
  "clear.around": stakes,
  "site.stakes": namedPlaces,
  "site.poles": namedPlaces,
  "site.cloth": stakes,
  "site.ticket": namedPlaces,
  "site.clear": stakes,
  "anchor.exposed": namedPlaces,
  "anchor.paper": nowhere,

  // Marks and stakes.
  baseline: () => [{ is: "length", name: "AB" }],
  "corner.first": ({ params }) => [
    { is: "angle", alongFt: Number(params.alongFt), acrossFt: Number(params.acrossFt), diagonalFt: Number(params.diagonalFt) },
  ],
  squared: nowhere,
  marked: edges,
  "kit.spread": stakes,
  "soil.named": corners,
  "soil.unknown": stakes,
  "stakes.size": nowhere,
  "stakes.bent": nowhere,
  "screened.short": stakes,
  "screened.sand": stakes,
  "screened.notKnown": stakes,
  "screened.notShort": stakes,
  "drive.edge": stakeLine,
  "lean.inward": stakes,
  "lean.outward": stakes,
  "count.corners": corners,
  "count.edge": stakeLine,
  "straps.choked": stakes,
  "pull.test": stakeLine,
  "pull.noFigure": stakeLine,
  "anchors.pulls": stakes,
  "anchors.noLoad": stakes,
  "anchors.pulledBefore": stakes,
  "pull.inside.test": poles,
  "pull.inside.noFigure": poles,

  // Cloth and lacing.
  groundCloth: ground,
  "lay.piece": ({ params }) => [{ is: "piece", id: String(params.piece) }],
  "cloth.strapped": windwardFirst,
  damage: pieces,
  "laid.order": pieces,
  "laid.looked": pieces,
  rings: edges,
  "lace.technique": nowhere,
  "lace.first": half("out"),
  "lace.ring": half("out"),
  "lace.out": half("out"),
  "half.tied": half("back"),
  "half.looked": half("look"),

  // Side poles.
  "straps.threaded": stakes,
  "sides.laid": edges,
  "raise.firstCorner": corner,
  "raise.corner": corner,
  "raise.edge": edge,
  "sides.feet": edges,
  "pins.both": edges,
  "straps.turns": stakes,
  "straps.locked": stakes,
  "sides.notTight": stakesAbreast,

  // Inside poles, up and down.
  "poles.pinned": nowhere,
  "under.hands": poles,
  "under.in": line,
  "under.ties": line,
  "under.out": line,
  "lift.quarters": line,
  "lift.center": line,
  "tied.quarters": line,
  "tied.center": line,
  "lower.quarters": line,
  "lower.center": line,
  "groundCloth.out": ground,

  // Tension.
  "tension.corners": () => inPairs(cornerMarks()),
  "tension.seamEnds": (of) => inPairs(stationsOf("corner", "seamEnd")(of)),
  "tension.plumb": stationsOf("corner", "seamEnd"),
  "tension.sides": stationsOf("side"),
  plumb: edges,
  "feet.onLine": edges,
  "seams.gaps": ({ plan }) => halfMarks(plan, "look"),
  "handles.locked": stakes,
  "round.again": roundAbreast,

  // Fit for the public, and watched.
  walked: edges,
  trips: stakes,
  walls: windwardFirst,
  exits: edges,
  "exits.ask": nowhere,
  "exits.width": edges,
  "exits.signs": edges,
  extinguishers: ground,
  fire: ground,
  "hung.loads": ground,
  "hung.nothing": ground,
  "plan.evacuate": nowhere,
  "plan.walls": nowhere,
  "forecast.fresh": nowhere,
  "forecast.clearBy": nowhere,
  "storm.plan": nowhere,
  "storm.agreed": nowhere,
  "night.watch": nowhere,
  handover: nowhere,
  "tension.again": roundAbreast,
  open: nowhere,
  watch: painted,
  "watch.end": nowhere,

  // Down.
  "strike.people": ground,
  "strike.power": nowhere,
  "strike.walls": windwardLast,
  "strike.ease": stakesAbreast,
  "strike.interiorDown": poles,
  "strike.sides.pair": ({ params }) => abreast(edgeMarks([params.one as EdgeName, params.other as EdgeName])),
  "strike.sides": () => inPairs(cornerMarks()),
  "strike.unlace": ({ params, plan, brokenOff }) => [...windwardLast({ params, plan, brokenOff }), ...halfMarks(plan, "back")],
  "strike.lower": windwardLast,
  "strike.fold": pieces,
  // The inside ones too: those are what a mower finds.
  "strike.stakes": painted,
  "back.stakes": stakes,
  "back.kit": nowhere,
  "strike.ground": ground,

  // Making safe.
  "safe.tools": nowhere,
  "safe.cloth": ground,
  "safe.rallyPoint": nowhere,
  "safe.pole": ({ plan, brokenOff }) =>
    brokenOff?.params.poles === undefined ? edgeMarks() : line({ params: brokenOff.params, plan, brokenOff }),
  "safe.out": ground,
  "safe.restrain": stakes,
  "safe.clear": nowhere,
  "safe.people": ground,
  "safe.power": nowhere,
  "safe.headcount": nowhere,
  "safe.looked": painted,

  // What kinds of work need.
  thunder: nowhere,
  warning: nowhere,
  paint: stakes,
  afterBlow: painted,
  survey: painted,
  earsAndEyes: nowhere,
  hats: nowhere,
  caller: nowhere,
  wayOut: nowhere,
  wind: nowhere,
};

/** Calls that are done in the order in which the wind comes at the edges. */
const BY_WIND: ReadonlySet<string> = new Set(["cloth.strapped", "walls", "strike.walls", "strike.unlace", "strike.lower", "safe.cloth"]);
export const dependsOnWind = (wordsKey: string): boolean => BY_WIND.has(wordsKey);

/** Calls that count people, not things of the plan. */
const OF_PEOPLE: ReadonlySet<string> = new Set(["talk.headcount", "safe.headcount"]);
export const countsPeople = (wordsKey: string): boolean => OF_PEOPLE.has(wordsKey);

/** Whether it is said of a call where it is done. */
export const hasPlace = (wordsKey: string): boolean => own(PLACES, wordsKey) !== undefined;

/** The things of the plan that a call is about, by its words; none where there is nothing to point at. */
export const placeOf = (wordsKey: string, of: Place): readonly Mark[] => own(PLACES, wordsKey)?.(of) ?? [];
