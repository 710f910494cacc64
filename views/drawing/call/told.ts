import type { Picture, SquarePicture, WindFacts } from "../../../machines/picture/picture.ts";
import { EDGES, type TentPlan } from "../../../machines/tent/types.ts";
import type { Words } from "../../text/words.ts";
import { northDeg } from "../surroundings.tsx";
import type { Surroundings } from "./around.tsx";
import type { Turn } from "./small-frame.ts";
import { sideOf } from "./street.tsx";

/** What a drawing says, for who cannot see it: its title, and all else in sentences. */
export type Told = { readonly title: string; readonly desc: string };
type Seen = { readonly picture: Picture; readonly plan: TentPlan; readonly turn: Turn; readonly surroundings: Surroundings };

export function toldOf({ picture, plan, turn, surroundings }: Seen, words: Words): Told {
  const text = words.picture;
  if (picture.kind === "wind") return windTold(picture.facts, words);
  const turned = [text.turned(EDGES.find((edge) => sideOf(edge, turn) === "top")!)];
  if (picture.kind === "square") return { title: text.corners, desc: [squareTold(picture, words), ...turned].join(" ") };
  const { about, done, next, windFromDeg } = picture;
  const { baselineBearingDeg: bearing, street, ground } = surroundings;
  return {
    title: about.length === 0 ? text.nowhere : text.here(about, plan),
    desc: [
      ...(done.length > 0 ? [text.done(done, plan)] : []),
      ...(next.length > 0 ? [text.next(next, plan)] : []),
      ...(about.some((m) => m.is === "corner" && m.pair) ? [text.pairs] : []),
      ...turned,
      ...(bearing === undefined ? [] : [text.north((((northDeg(plan, bearing) + turn) % 360) + 360) % 360)]),
      ...(windFromDeg === undefined ? [] : [text.windBlows(windFromDeg)]),
      ...(ground && ground.site.buried.length + ground.site.overhead.length > 0
        ? [text.lines(ground.site.buried.length, ground.site.overhead.length)]
        : []),
      ...(street ? [text.street(street.name, street.edge)] : []),
    ].join(" "),
  };
}

const squareTold = ({ found, next }: SquarePicture, words: Words): string =>
  found === null ? words.picture.taping(next) : words.findingText({ kind: "lengths", squared: found });

/** The wind, what it is held against, and where it comes from. */
export function windTold(facts: WindFacts, { picture: text }: Words): Told {
  const fromDeg = facts.reading?.fromDeg ?? null;
  return {
    title: text.windTitle(facts),
    desc: [
      text.windAgainst(facts),
      ...(fromDeg === null ? [] : [`${text.windFrom(fromDeg)}.`]),
      ...(facts.windward.length > 0 ? [text.windSide(facts.windward)] : []),
    ].join(" "),
  };
}
