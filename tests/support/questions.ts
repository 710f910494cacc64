import { expect } from "vitest";
import { indexOf } from "../../machines/install/script-index.ts";
import type { Frozen } from "../../machines/install/step.ts";
import type { Question, Shown } from "../../machines/rehearsal/questions/question.ts";
import { planTent } from "../../machines/tent/plan.ts";
import { checkSpec } from "../../machines/tent/spec.ts";
import { CORNERS } from "../../machines/tent/types.ts";

/** What is right of a question, as it shows. */
export const rightOf = ({ options, right }: Question): Shown[] => right.map((id) => options.find((option) => option.id === id)!.shown);
const numberOf = (question: Question): number => {
  const [shown] = rightOf(question);
  return shown && "n" in shown ? shown.n : Number.NaN;
};

/** Plates at a station, by where they lie, with their stakes: not by what the station says of itself. */
const platesAt = ({ plan }: Frozen, station: unknown) => plan.plates.filter((plate) => plate.station === station);
const stakes = (plates: readonly { readonly stakes: number }[]) => plates.reduce((n, plate) => n + plate.stakes, 0);
const kit = ({ plan }: Frozen, item: string) => plan.kit.find((line) => line.item === item)?.count ?? 0;
const isCorner = (station: string) => CORNERS.some((corner) => corner === station);

/** Counts once more, from the plates and the kit instead of stations. */
const COUNTED: Readonly<Record<string, (frozen: Frozen, of: Question["params"]) => number>> = {
  stakes: (f, { station }) => stakes(platesAt(f, station)),
  plates: (f, { station }) => platesAt(f, station).length,
  stakesCorners: (f) => stakes(f.plan.plates.filter((plate) => isCorner(plate.station))),
  stakesAlong: (f, { edge }) =>
    stakes(f.plan.plates.filter((plate) => plate.station.replace(/\d+$/, "") === edge && !isCorner(plate.station))),
  stationsOn: (f, { edge }) => f.plan.edges.find((e) => e.name === edge)!.baysFt.length + 1,
  strapped: (f) => 4 + new Set(f.plan.seams.flatMap((s) => s.halves.map((h) => h.id))).size,
  around: (f) => kit(f, "sidePole") + kit(f, "cornerPole"),
  inside: (f) => kit(f, "centerPole") + kit(f, "quarterPole"),
  stakesBack: (f) => kit(f, "perimeterStake") + kit(f, "interiorStake"),
  runs: (f) => f.script.steps.filter((s) => s.wordsKey === "half.tied").length,
};
const KIT_OF: Readonly<Record<string, string[]>> = {
  stakes: ["perimeterStake"],
  plates: ["stakePlate"],
  sidePoles: ["sidePole", "cornerPole"],
  poles: ["centerPole", "quarterPole"],
};

/** Holds a question against its job in another way than it was made. */
export function expectRight(frozen: Frozen, question: Question): void {
  const { kind, ask, params, about, options } = question;
  const { script, plan } = frozen;
  const [right] = rightOf(question);
  const said = `${question.item}: ${JSON.stringify(question)}`;
  if (ask in COUNTED) expect(numberOf(question), said).toBe(COUNTED[ask]!(frozen, params));
  if (kind === "size") {
    const { rings: _, shifted: __, ...spec } = plan.spec;
    const [widthFt, lengthFt] = [Number(params.widthFt), Number(params.lengthFt)];
    const midsFt = !spec.onePiece && lengthFt - widthFt > plan.lengthFt - plan.widthFt ? [...spec.midsFt, lengthFt - widthFt - (plan.lengthFt - plan.widthFt)] : spec.midsFt; // biome-ignore format: one line reads best
    const checked = checkSpec({ ...spec, widthFt, lengthFt, midsFt, leaveOut: [], add: [] });
    const other = "spec" in checked ? planTent(checked.spec).kit : [];
    const count = other.filter((line) => KIT_OF[String(params.of)]!.includes(line.item)).reduce((n, line) => n + line.count, 0);
    expect(numberOf(question), said).toBe(count);
  }
  if (kind === "order") {
    const places = rightOf(question).map((shown) => script.steps.findIndex((s) => shown.is === "call" && s.wordsKey === shown.wordsKey && s.phase === question.phase)); // biome-ignore format: one line reads best
    expect(places, said).toEqual([...places].sort((a, b) => a - b));
  }
  if (ask === "laced" && right?.is === "laced") {
    const lace = script.steps.find((s) => s.id === `tied.${params.half}`)!;
    expect([right.lace, right.eyelet], said).toEqual([lace.params.lace, lace.params.eyelet]);
  }
  if (ask === "place.station" && right?.is === "place") {
    const [from, to] = [String(params.station)[0], String(params.station)[1]];
    const at = (id: string | undefined) => plan.stations.find((s) => s.id === id)!;
    const far = (p: { xFt: number; yFt: number }) => Math.hypot(at(from).xFt - p.xFt, at(from).yFt - p.yFt);
    const nearer = plan.stations.filter((s) => s.edge === `${from}${to}` && far(s) < far(right) - 0.01);
    expect(nearer.length, said).toBe(Number(String(params.station).slice(2)));
  }
  if (kind === "before" && right?.is === "asked") {
    const step = script.steps.find((s) => s.wordsKey === about!.wordsKey && s.phase === question.phase)!;
    const named = (shown: Shown) => script.conditions.filter((c) => shown.is === "asked" && c.wordsKey === shown.wordsKey && c.params.belowMph === shown.params.belowMph); // biome-ignore format: one line reads best
    const isOver = (shown: Shown) => named(shown).some((c) => c.over.includes(step.work!) && c.notIn !== step.phase);
    expect(options.map((option) => isOver(option.shown)), said).toEqual(options.map(({ id }) => question.right.includes(id))); // biome-ignore format: one line reads best
    // What an earlier call asked or needed has to be so as well: it is no wrong answer.
    const earlier = script.steps.slice(0, script.steps.indexOf(step));
    const wasAsked = (shown: Shown) => shown.is === "asked" && earlier.some((s) => (s.gate !== null && s.wordsKey === shown.wordsKey && JSON.stringify(s.params) === JSON.stringify(shown.params)) || named(shown).some((c) => c.over.includes(s.work!))); // biome-ignore format: one line reads best
    expect(
      options.filter(({ id, shown }) => !question.right.includes(id) && wasAsked(shown)),
      said,
    ).toEqual([]);
  }
  if (kind === "reopens") {
    const isOfSession = (shown: Shown) => script.conditions.some((c) => c.gate.session && shown.is === "asked" && c.wordsKey === shown.wordsKey); // biome-ignore format: one line reads best
    expect(
      options.filter(({ id, shown }) => !question.right.includes(id) && isOfSession(shown)),
      said,
    ).toEqual([]);
    const what = ask.slice("reopens.".length);
    const gates = [...indexOf(script).questions.values()];
    const isAgain = (shown: Shown) => gates.some((g) => shown.is === "asked" && g.wordsKey === shown.wordsKey && g.params.belowMph === shown.params.belowMph && g.gate.reopenedBy.some((by) => by === what)); // biome-ignore format: one line reads best
    expect(options.map((option) => isAgain(option.shown)), said).toEqual(options.map(({ id }) => question.right.includes(id))); // biome-ignore format: one line reads best
  }
  if (ask === "limit.wind.lift") expect(numberOf(question), said).toBe(frozen.limits.raiseGustMph.is);
  if (ask === "limit.wind.lower") expect(numberOf(question), said).toBe(frozen.limits.stopGustMph.is);
  if (question.item === "limit.showing") expect(numberOf(question), said).toBe(frozen.limits.maxShowingIn.is);
  if (question.item === "age.thunder") expect(right, said).toEqual({ is: "time", s: frozen.limits.thunderS.is });
  if (kind === "refused" && right?.is === "refusal") {
    expect(right.why, said).toBe(REFUSED_FOR[ask]);
    const shown: readonly string[] = options.map((option) => (option.shown.is === "refusal" ? option.shown.why : ""));
    for (const [is, too] of SAME_IN_OTHER_WORDS) expect(right.why === is && shown.includes(too), said).toBe(false);
  }
}

/** What would be as true where something is refused, by hand: a crew could say either. */
const SAME_IN_OTHER_WORDS: readonly (readonly [string, string])[] = [
  ["tooMuchWind", "outOfLimit"],
  ["hardGate", "open"],
  ["outOfLimit", "open"],
  ["samePerson", "open"],
];

/** What each is refused for, by hand. */
const REFUSED_FOR: Readonly<Record<string, string>> = {
  "refused.role": "role",
  "refused.open": "open",
  "refused.held": "held",
  "refused.outOfLimit": "outOfLimit",
  "refused.waive": "hardGate",
  "refused.movedOn": "movedOn",
  "refused.outOfUse": "outOfUse",
  "refused.second": "samePerson",
  "refused.stale": "windTooOld",
  "refused.gust": "tooMuchWind",
  "refused.thunder": "thunder",
  "refused.under": "peopleUnder",
};
