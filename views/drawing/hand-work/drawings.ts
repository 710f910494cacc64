import type { HandWorkId } from "../../../machines/picture/hand-work.ts";
import type { Drawing } from "./drawing.ts";
import { flap } from "./flap.tsx";
import { leanIn, standUp } from "./inside-poles.tsx";
import { loops } from "./lacing.tsx";
import { levelTape, threeFourFive } from "./layout.tsx";
import { cornerEarly, unzips } from "./letting-go.tsx";
import { longLoop } from "./long-loop.tsx";
import { plates } from "./plates.tsx";
import { ratchetEased } from "./ratchet-eased.tsx";
import { ratchetLocked, ratchetThreaded, ratchetWrapped } from "./ratchets.tsx";
import { ringHook } from "./ring-hook.tsx";
import { pin, plumb } from "./side-poles.tsx";
import { signals } from "./signals.tsx";
import { showing, stakeLean } from "./stakes.tsx";
import { strapChoked } from "./straps.tsx";
import { tolerance } from "./tolerance.tsx";
import { tieOff } from "./tying.tsx";

/** Every drawing of the hand work by its id. */
export const DRAWINGS: Readonly<Record<HandWorkId, Drawing>> = {
  tolerance,
  signals,
  threeFourFive,
  levelTape,
  plates,
  stakeLean,
  showing,
  strapChoked,
  ringHook,
  loops,
  flap,
  longLoop,
  tieOff,
  unzips,
  ratchetThreaded,
  pin,
  ratchetWrapped,
  ratchetLocked,
  leanIn,
  standUp,
  plumb,
  ratchetEased,
  cornerEarly,
};
