import { alwaysExact } from "./always-exact.ts";
import type { DoubtKind } from "./doubt.ts";
import { missedReadings } from "./missed-readings.ts";
import { outOfLimitThen } from "./out-of-limit-then.ts";
import { quickSecond } from "./quick-second.ts";
import { refusedBeforeAnswer } from "./refused-before-answer.ts";
import { sameDevice } from "./same-device.ts";
import { sameReading } from "./same-reading.ts";
import { tooFastDriving } from "./too-fast-driving.ts";
import { tooFastPhase } from "./too-fast-phase.ts";
import { tooFastReading } from "./too-fast-reading.ts";
import { tooFastWalk } from "./too-fast-walk.ts";
import type { Watch } from "./watch.ts";

/** Every kind of doubt, under its name. */
const WATCHES = {
  quickSecond,
  sameDevice,
  alwaysExact,
  sameReading,
  tooFastWalk,
  tooFastDriving,
  tooFastReading,
  tooFastPhase,
  outOfLimitThen,
  refusedBeforeAnswer,
  missedReadings,
} as const satisfies { readonly [K in DoubtKind]: { readonly kind: DoubtKind } };

/** The kind by its name. What it is handed has to be what it kept itself. */
export const watchOf = (kind: DoubtKind): Watch<unknown> =>
  // Each keeps its own state under its own name: an index cannot tell TypeScript that.
  WATCHES[kind] as unknown as Watch<unknown>;
