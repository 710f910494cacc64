import type { Value } from "../../../machines/install/gates.ts";
import type { Blowing, Scene, SituationId } from "../../../machines/rehearsal/scene.ts";
import type { Sign } from "../../../machines/rehearsal/signs.ts";
import { valueText } from "./limits.ts";
import { things } from "./names.ts";
import { compassPoint } from "./said.ts";

type Name = (person: string) => string;
type Shown = { readonly scene: Scene; readonly name: Name };
type Signs = { readonly [I in Sign["is"]]?: (shown: Shown) => string };

type Cause = readonly [why: string, over: string];
/** What a hold is called for at poles, and that it is over. As many as `CAUSES`, here and below. */
const AT_POLES: readonly Cause[] = [
  ["Somebody's standing inside the fan of that pole.", "They're clear."],
  ["A strap's caught on a ring.", "Strap's free."],
  ["A pole foot's walking.", "Foot's back and roped."],
  ["Two people just walked in under the cloth.", "They're out."],
];
/** At other work, before any pole stands. */
const HOLD_FOR: Readonly<Record<string, readonly Cause[]>> = {
  driving: [
    ["Somebody's head is down by the driver.", "They're clear."],
    ["A kid ran in along the stake line.", "The kid's out, with somebody."],
    ["A glove's caught on the stake.", "Glove's free."],
    ["The driver's handle is cracked.", "It's swapped."],
  ],
  openCloth: [
    ["Somebody's foot is in a rope loop.", "Foot's free."],
    ["The cloth's hung up on a stake.", "Cloth's free."],
    ["Somebody's under the fold.", "They're out."],
    ["A kid ran across the cloth.", "The kid's off, with somebody."],
  ],
};
/** How somebody is hurt. As many as `CAUSES`. */
const HURT: readonly ((who: string) => string)[] = [
  (who) => `${who} pinched a hand, bad.`,
  (who) => `${who} is on one knee, dizzy.`,
  (who) => `${who} took a strap end in the face.`,
  (who) => `${who} rolled an ankle.`,
];

const at = <T>(list: readonly T[], { params }: Scene): T => list[Number(params.cause ?? 0) % list.length]!;
const causeOf = (scene: Scene): Cause => at(HOLD_FOR[String(scene.params.work)] ?? AT_POLES, scene);
const by = ({ scene: { params }, name }: Shown): string => name(String(params.by));
const wind = ({ brings }: Scene): Blowing => (brings.kind === "wind" ? brings.wind : { mph: 0, gustMph: 0, fromDeg: 0 });
const meter = ({ mph, gustMph, fromDeg }: Blowing): string => `Meter: ${mph}, gusts ${gustMph}, out of the ${compassPoint(fromDeg)}.`;
const looked = ({ brings }: Scene): string =>
  "looks" in brings && brings.looks !== "oneShort" && brings.looks[0] ? valueText(brings.looks[0]) : "";
const short = ({ brings }: Scene): string =>
  brings.kind === "short" && brings.thing.is === "kit" ? things(brings.thing.short, brings.thing.item) : "";
const blows = (first: string): Signs => ({
  new: ({ scene }) => `${first} ${meter(wind(scene))}`,
  on: ({ scene }) => `Still blowing. ${meter(wind(scene))}`,
});

/** What is to be seen and heard, situation by situation: facts, never what to do about them. */
const SIGNS: { readonly [S in SituationId]: Signs } = {
  windUp: blows("Cloth's starting to lift."),
  squall: blows("Sky's gone dark. The whole top is pumping."),
  breeze: blows("Flags are out straight."),
  phoneDies: {
    new: ({ scene }) => `Your phone was dead 40 minutes. ${meter(wind(scene))}`,
    on: ({ scene }) => `Still blowing. ${meter(wind(scene))}`,
  },
  thunder: { new: () => "A rumble, off to the side. Nobody else looked up." },
  warning: { new: () => "The radio: severe thunderstorm warning for this county.", on: () => "The warning's still out." },
  rain: { new: () => "It rained hard for ten minutes. Everything's wet." },
  holdCalled: {
    on: (shown) => `${by(shown)}: "Hold!" ${causeOf(shown.scene)[0]}`,
    over: (shown) => `${by(shown)}: "${causeOf(shown.scene)[1]}"`,
  },
  hurt: {
    new: (shown) => at(HURT, shown.scene)(by(shown)),
    on: (shown) => `Somebody's with ${by(shown)}. It isn't settled.`,
    over: (shown) => `${by(shown)} is sitting up by the truck, looked after.`,
  },
  rock: { new: ({ scene: s }) => `${s.params.place} hit something hard. It rings, and won't go: ${looked(s)} shows.` },
  softGround: { new: ({ scene: s }) => `The stake creeps. The gauge lets go at ${looked(s)}.` },
  nearLine: { new: ({ scene: s }) => `The dot at ${s.params.place} is ${looked(s)} from the paint.` },
  bentStakes: { new: ({ scene: s }) => `${looked(s)} in the pile don't roll straight.` },
  leaning: { new: ({ scene: s }) => `${looked(s)} near ${s.params.place} lean at the tent.` },
  tapeMisread: { new: () => "The tape's called out. Somebody's thumb was on the wrong foot." },
  otherSheet: { new: ({ scene: s }) => `The paper in the truck says ${looked(s)}.` },
  handMissing: { new: ({ scene: s }) => `You count ${looked(s)}. Somebody's still at the gas station.` },
  stillUnder: { new: () => "One pair of boots still shows under the cloth." },
  panelWrong: { new: () => "Two panels lie with loops facing loops." },
  torn: { new: ({ scene: s }) => `You can put a thumb through: ${looked(s)} bad.` },
  strapOpen: { new: ({ scene: s }) => `One handle near ${s.params.place} stands open.` },
  noHat: { new: () => "Two came back from the truck, bareheaded." },
  markGone: { new: ({ scene: s }) => `A truck turned on the paint near ${s.params.place}. The marks are gone.` },
  short: {
    new: ({ scene }) => `You're short on the pile: ${short(scene)}.`,
    on: ({ scene }) => `Not here yet: ${short(scene)}.`,
    over: ({ scene }) => `The truck's back: ${short(scene)}.`,
  },
  tooFast: { new: () => "That yes came at once, from the far corner. Nobody walked over." },
};

/** One of them in a sentence. */
export const signText = ({ scene, is }: Sign, name: Name): string =>
  (SIGNS[scene.is][is] ?? SIGNS[scene.is].new ?? SIGNS[scene.is].on)?.({ scene, name }) ?? "";

/** More than so many lines of a list are told as the list that the call shows. */
const MAX_LISTED = 6;
/** An answer as it is seen: a whole truckload, which leaves a phone no room for its call, in short. It is never short there. */
export const seenText = (value: Value): string =>
  value.kind === "counts" && Object.keys(value.n).length > MAX_LISTED ? "everything on the list" : valueText(value);
/** What is to be seen where something is asked. */
export const lookText = (value: Value): string => `You look: ${seenText(value)}.`;
export const meterText = meter;
