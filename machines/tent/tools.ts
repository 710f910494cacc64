/** What a crew needs on the truck besides the tent: whatever a call asks for. */
export type ToolItem =
  | "firstAidKit"
  | "waterCooler"
  | "horn"
  | "windMeter"
  | "hardHat"
  | "whitePaint"
  | "tape300"
  | "tape200"
  | "tape100"
  | "pocketTape"
  | "layoutPin"
  | "stringLine"
  | "level"
  | "plumbBob"
  | "caliper"
  | "leanGauge"
  | "pullGauge"
  | "comeAlong"
  | "ballastWeight"
  | "stakeDriver"
  | "earMuff"
  | "goggles"
  | "stakeCap"
  | "groundCloth"
  | "footRope"
  | "strapFlag"
  | "wallSet"
  | "exitSign"
  | "extinguisher"
  | "ladder"
  | "broom"
  | "stakePuller"
  | "shovel";

/** What the tools are counted from. Lengths in feet; all else is a number of things. */
export type ToolNeeds = {
  readonly people: number;
  readonly pieces: number;
  /** In the ground, inside ones too: each gets a cap. */
  readonly stakes: number;
  readonly straps: number;
  /** The longest line that is taped: a diagonal, or the stake line of an edge. */
  readonly longestFt: number;
  readonly walls: boolean;
  readonly exits: number;
  readonly exitSigns: boolean;
  /** Ground of unknown kind, where stakes are pulled on. */
  readonly pulls: boolean;
  /** Straps that end at a weight. Absent where none does. */
  readonly weights?: number;
};
export type ToolLine = { readonly item: ToolItem; readonly count: number };

/**
 * Hats, muffs and goggles: one each for who is on site, and on to the next four. A late hand or a visitor finds one, and the
 * truck is not asked for again whenever somebody joins. Common practice, no source.
 */
const eachAndToTheNextFour = (people: number): number => Math.ceil(people / 4) * 4;

/** People to a five-gallon cooler: a quart an hour each, over half a hot day. Common practice, no source. */
const PER_COOLER = 4;

/**
 * What goes on the truck besides the tent, because a call asks for it: to lay out, to drive, to keep the crew whole, to open
 * to the public. All of it comes back, cans and flags included. Common practice, no source. Walls are one line, as nothing
 * says how long the sections are that a yard has.
 *
 * @example toolsOf({ people: 6, pieces: 5, stakes: 112, straps: 50, longestFt: 128, walls: true, exits: 3, exitSigns: true, pulls: false }).length // 29
 */
export function toolsOf({ people, pieces, stakes, straps, longestFt, walls, exits, exitSigns, pulls, weights = 0 }: ToolNeeds): ToolLine[] {
  const each = eachAndToTheNextFour(people);
  const counts: Record<ToolItem, number> = {
    firstAidKit: 1,
    waterCooler: each / PER_COOLER,
    horn: 1,
    windMeter: 1,
    hardHat: each,
    whitePaint: 2,
    // One tape covers the longest line: two hooked together add their errors.
    tape300: longestFt > 200 ? 1 : 0,
    tape200: longestFt > 200 ? 0 : 1,
    tape100: 1,
    pocketTape: 2,
    // The corners, and both ends of what is measured from them.
    layoutPin: 6,
    stringLine: 1,
    level: 1,
    plumbBob: 1,
    caliper: 1,
    leanGauge: 1,
    pullGauge: pulls ? 1 : 0,
    comeAlong: pulls ? 1 : 0,
    ballastWeight: weights,
    stakeDriver: 2,
    earMuff: each,
    goggles: each,
    stakeCap: stakes,
    groundCloth: pieces,
    // A side-pole team has one for each foot that nobody holds.
    footRope: 4,
    strapFlag: straps,
    wallSet: walls ? 1 : 0,
    exitSign: exitSigns ? exits : 0,
    extinguisher: exits,
    ladder: 1,
    broom: 1,
    stakePuller: 1,
    shovel: 1,
  };
  return (Object.entries(counts) as [ToolItem, number][]).flatMap(([item, count]) => (count > 0 ? [{ item, count }] : []));
}
