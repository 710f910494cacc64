import type { Child } from "hono/jsx";
import type { Picture, WindFacts } from "../../../machines/picture/picture.ts";
import type { TentPlan } from "../../../machines/tent/types.ts";
import type { Words } from "../../text/words.ts";
import { roomFor, type Surroundings } from "./around.tsx";
import { towardOf } from "./compass.tsx";
import { planFrame } from "./part-shown.ts";
import { PlanDrawing } from "./plan-picture.tsx";
import { ACROSS_A_PHONE, type Box, PICTURE, type Turn } from "./small-frame.ts";
import { SquareDrawing } from "./square-picture.tsx";
import { type Told, toldOf, windTold } from "./told.ts";
import { Dial } from "./wind-dial.tsx";

export type CallPictureProps = {
  picture: Picture;
  plan: TentPlan;
  words: Words;
  turn: Turn;
  surroundings?: Surroundings;
  box?: Box;
  /** Its name on the page, where there is another. */
  id?: string;
};

/**
 * The drawing that stands with a call. It fills a box of the given aspect and grows with it: sizes are those at which it is as
 * wide as a phone. The whole plan is turned by `turn` degrees clockwise; letters and numbers stay upright. Its colors are
 * those of the text around it.
 *
 * @example <CallPicture picture={pictureOf(job, at)} plan={plan} words={words} turn={usualTurn(plan)} surroundings={brief.site} />
 */
export function CallPicture({ picture, plan, words, turn, surroundings = {}, box = ACROSS_A_PHONE, id = PICTURE }: CallPictureProps) {
  const told = toldOf({ picture, plan, turn, surroundings }, words);
  if (picture.kind === "wind")
    return (
      <Sheet id={id} kind="wind" told={told} box={WIND_BOX}>
        <Dial facts={picture.facts} turn={turn} fills={id} words={words} />
      </Sheet>
    );
  if (picture.kind === "square")
    return (
      <Sheet id={id} kind="square" told={told} box={box}>
        <SquareDrawing picture={picture} plan={plan} turn={turn} box={box} words={words} />
      </Sheet>
    );
  const toward = towardOf(plan, turn, surroundings.baselineBearingDeg, picture);
  const frame = { ...planFrame(plan, picture.about, turn, { box, room: roomFor(surroundings, turn, toward) }), fills: id };
  return (
    <Sheet id={id} kind="plan" told={told} box={box}>
      <PlanDrawing
        picture={picture}
        plan={plan}
        frame={frame}
        street={surroundings.street}
        ground={surroundings.ground}
        toward={toward}
        words={words}
      />
    </Sheet>
  );
}

/** The dial has one shape; in another box it is drawn as large as it fits. */
const WIND_BOX = ACROSS_A_PHONE;

/**
 * The wind by itself, as on a page about it. `turn` is that of the plan on the same screen.
 *
 * @example <WindDial facts={windFacts(job, at)} words={words} />
 */
export const WindDial = ({ facts, words, turn = 0 }: { facts: WindFacts; words: Words; turn?: Turn }) => (
  <Sheet id={PICTURE} kind="wind" told={windTold(facts, words)} box={WIND_BOX}>
    <Dial facts={facts} turn={turn} words={words} />
  </Sheet>
);

type SheetProps = { id: string; kind: Picture["kind"]; told: Told; box: Box; children?: Child };

const Sheet = ({ id, kind, told, box, children }: SheetProps) => (
  <svg
    id={id}
    class={`drawn-call drawn-call-${kind}`}
    xmlns="http://www.w3.org/2000/svg"
    viewBox={`0 0 ${box.widePx} ${box.highPx}`}
    preserveAspectRatio="xMidYMid meet"
    width="100%"
    role="img"
    font-family="system-ui, sans-serif"
    font-weight="500"
    text-anchor="middle"
    dominant-baseline="central"
    stroke-linejoin="round"
  >
    <title>{told.title}</title>
    <desc>{told.desc}</desc>
    {children}
  </svg>
);
