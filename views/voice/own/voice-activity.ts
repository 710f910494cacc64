/** Sound is looked at so many ms at a time. */
export const FRAME_MS = 20;
const frames = (ms: number): number => Math.round(ms / FRAME_MS);

/** What is quiet is taken from the past few seconds: the level that 15 of 100 frames stay under. */
const FLOOR_FRAMES = frames(3000);
const FLOOR_SHARE = 0.15;
/** A microphone that has just been opened gives silence of its own making for a moment. */
const SKIPPED = frames(500);
/** Speech begins where it is so likely in 3 of 6 frames, and has ended when it was less likely than that for so long. */
const LIKELY = 0.6;
const STILL_LIKELY = 0.4;
const [BEGUN, OF] = [3, 6];
export const QUIET_MS = 350;
const QUIET = frames(QUIET_MS);
/** A gap of so long is likely its end: words in a row have shorter ones. What hisses at the end of a word is over the noise by more than this. */
const PAUSE = frames(160);
const HISSES_DB = 6;
/** What is longer than this is no answer: talk among the crew, or a machine. */
const MAX_FRAMES = frames(6000);
/** Levels under this are digital silence. */
const LOWEST_DB = -96;

/** Wind and hum lie under it, and say little of how well speech is heard: a first-order high-pass at 300 Hz, for sound at 48 kHz. */
const KEPT_OF_LAST = 0.9615;

/** How loud sound is, frame by frame, in dB against the loudest that there is; samples are between -1 and 1. */
export class Loudness {
  #last = 0;
  #passed = 0;

  take(frame: Float32Array): number {
    let squares = 0;
    for (const sample of frame) {
      this.#passed = KEPT_OF_LAST * (this.#passed + sample - this.#last);
      this.#last = sample;
      squares += this.#passed ** 2;
    }
    return Math.max(LOWEST_DB, 10 * Math.log10(Math.max(squares / frame.length, 1e-12)));
  }
}

/** What a frame comes to: speech began with it or a little before, pauses, ended before it, or went on for too long. */
export type Activity = "quiet" | "began" | "goesOn" | "pauses" | "ended" | "tooLong";

/**
 * Tells speech from quiet by how likely what takes the noise out finds it, and how far it is over the noise of the place. Thresholds were
 * looked for on synthetic speech in noise.
 */
export class VoiceActivity {
  readonly #levels: number[] = [];
  #skip = SKIPPED;
  #recent: boolean[] = [];
  #speech: number[] = [];
  #quiet = 0;
  #still = 0;
  #isSpeech = false;
  /** The level of the noise, in dB. */
  floorDb = 0;
  /** How much the last speech was over the noise: the mean of the louder half of its frames. */
  marginDb = 0;

  /** Takes the next frame: its level in dB, and how likely there is speech in it. */
  take(level: number, speech: number): Activity {
    if (this.#skip > 0) {
      this.#skip--;
      return "quiet";
    }
    this.#follow(level);
    if (!this.#isSpeech) {
      this.#recent = [...this.#recent, speech >= LIKELY].slice(-OF);
      this.#speech = [...this.#speech, level].slice(-OF);
      if (this.#recent.filter(Boolean).length < BEGUN) return "quiet";
      this.#isSpeech = true;
      this.#quiet = 0;
      this.#still = 0;
      return "began";
    }
    this.#speech.push(level);
    this.#quiet = speech >= STILL_LIKELY ? 0 : this.#quiet + 1;
    this.#still = this.#quiet === 0 || level > this.floorDb + HISSES_DB ? 0 : this.#still + 1;
    const ended = this.#quiet >= QUIET;
    if (!ended && this.#speech.length < MAX_FRAMES) return this.#still === PAUSE ? "pauses" : "goesOn";
    this.#end();
    return ended ? "ended" : "tooLong";
  }

  /** Whether what was said so far is followed by a gap that may be its end. */
  get isPausing(): boolean {
    return this.#isSpeech && this.#still >= PAUSE;
  }

  /** Speech that is going on ends here: the button was let go. Tells whether there was any. */
  cut(): boolean {
    const was = this.#isSpeech;
    if (was) this.#end();
    return was;
  }

  #end(): void {
    const louder = this.#speech.sort((a, b) => b - a).slice(0, Math.ceil(this.#speech.length / 2));
    this.marginDb = louder.reduce((sum, level) => sum + level, 0) / louder.length - this.floorDb;
    this.#isSpeech = false;
    this.#recent = [];
    this.#speech = [];
  }

  #follow(level: number): void {
    this.#levels.push(level);
    if (this.#levels.length > FLOOR_FRAMES) this.#levels.shift();
    this.floorDb = [...this.#levels].sort((a, b) => a - b)[Math.floor(this.#levels.length * FLOOR_SHARE)]!;
  }
}
