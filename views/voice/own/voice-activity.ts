/** Sound is looked at so many ms at a time. */
export const FRAME_MS = 20;
const frames = (ms: number): number => Math.round(ms / FRAME_MS);

/** What is quiet is taken from the past few seconds: the level that 15 of 100 frames stay under. */
const FLOOR_FRAMES = frames(3000);
const FLOOR_SHARE = 0.15;
/** A microphone that has just been opened gives silence of its own making for a moment. */
const SKIPPED = frames(500);
/** Speech begins where 4 of 6 frames are so much over the floor, and has ended when none was for so long. */
const OVER_DB = 9;
const [BEGUN, OF] = [4, 6];
const QUIET = frames(350);
/** Loud for longer than this it is no answer: other people, or a machine. */
const MAX_FRAMES = frames(6000);
/** Levels under this are digital silence. */
const LOWEST_DB = -96;

/** How loud a frame is, in dB against the loudest that there is; samples are between -1 and 1. Its mean does not count. */
export function levelDb(frame: ArrayLike<number>): number {
  let [sum, squares] = [0, 0];
  for (let i = 0; i < frame.length; i++) {
    sum += frame[i]!;
    squares += frame[i]! * frame[i]!;
  }
  const variance = squares / frame.length - (sum / frame.length) ** 2;
  return Math.max(LOWEST_DB, 10 * Math.log10(Math.max(variance, 1e-12)));
}

/** What a frame comes to: speech began with it or a little before, ended before it, or went on for too long. */
export type Activity = "quiet" | "began" | "goesOn" | "ended" | "tooLong";

/**
 * Tells speech from quiet by how far a frame is over the floor, which follows the noise of the place. Thresholds were looked for on
 * synthetic speech in noise.
 */
export class VoiceActivity {
  readonly #levels: number[] = [];
  #skip = SKIPPED;
  #recent: boolean[] = [];
  #speech: number[] = [];
  #quiet = 0;
  #loud = false;
  /** The level of the noise, in dB. */
  floorDb = 0;
  /** How much the last speech was over the noise: the mean of the louder half of its frames. */
  marginDb = 0;

  /** Takes the next frame's level. */
  take(level: number): Activity {
    if (this.#skip > 0) {
      this.#skip--;
      return "quiet";
    }
    this.#follow(level);
    const over = level >= this.floorDb + OVER_DB;
    if (!this.#loud) {
      this.#recent = [...this.#recent, over].slice(-OF);
      this.#speech = [...this.#speech, level].slice(-OF);
      if (this.#recent.filter(Boolean).length < BEGUN) return "quiet";
      this.#loud = true;
      this.#quiet = 0;
      return "began";
    }
    this.#speech.push(level);
    this.#quiet = over ? 0 : this.#quiet + 1;
    const ended = this.#quiet >= QUIET;
    if (!ended && this.#speech.length < MAX_FRAMES) return "goesOn";
    this.#end();
    return ended ? "ended" : "tooLong";
  }

  /** Speech that is going on ends here: the button was let go. Tells whether there was any. */
  cut(): boolean {
    const was = this.#loud;
    if (was) this.#end();
    return was;
  }

  #end(): void {
    const louder = this.#speech.sort((a, b) => b - a).slice(0, Math.ceil(this.#speech.length / 2));
    this.marginDb = louder.reduce((sum, level) => sum + level, 0) / louder.length - this.floorDb;
    this.#loud = false;
    this.#recent = [];
    this.#speech = [];
  }

  #follow(level: number): void {
    this.#levels.push(level);
    if (this.#levels.length > FLOOR_FRAMES) this.#levels.shift();
    this.floorDb = [...this.#levels].sort((a, b) => a - b)[Math.floor(this.#levels.length * FLOOR_SHARE)]!;
  }
}
