import annyang from "annyang";
import { ERRORS, SAME_FOR_ALL } from "./engine.ts";
import type { Engines, Listening } from "./engines.ts";
import { type Engine, type Utterance, utteranceRecognizer } from "./recognizer.ts";
import type { VoiceStatus } from "./status.ts";

/** One thing heard, and whether it was said with the talk button held. */
export type Heard = Utterance & { readonly talk: boolean };
type Told = { readonly heard: (heard: Heard) => void; readonly status: (status: VoiceStatus) => void };

/** While the browser asks its holder for the microphone. */
const ASKED_MS = 30_000;
/** How long an engine that was told to stop may take to say so. */
const ENDED_MS = 1000;
/** After the button is let go, the last words are waited for so long. */
const FINISH_MS = 4000;
/** A press shorter than this keeps listening for one thing said: a gloved thumb does not hold well. */
const TAP_MS = 400;
const TAP_LISTENS_MS = 6000;
/** How far before the press a word may have begun. */
const EARLY_MS = 300;
/** So many ends in a row without a word, each sooner than this, and it is given up. */
const MAX_ENDS = 5;
const SOON_MS = 1500;
const MAX_NETWORK_ERRORS = 3;

/** Listening through annyang: all the time, or while the talk button is held. One a page. */
export class Listener {
  readonly #told: Told;
  readonly #engines: Engines;
  #by: Listening | null = null;
  #open = false;
  #listening = false;
  /** Until it has said that it ended, an engine that was told to stop cannot be started again. */
  #running = false;
  #again = false;
  #from = Number.POSITIVE_INFINITY;
  #until = Number.NEGATIVE_INFINITY;
  #spoken: Utterance | null = null;
  #wordsSinceStart = false;
  #startedAt = 0;
  #ends = 0;
  #networkErrors = 0;
  #down = false;
  #got = false;
  #starting: number | undefined;
  #talking: number | undefined;
  #ending: number | undefined;
  status: VoiceStatus = "off";

  constructor(engines: Engines, told: Told) {
    this.#told = told;
    this.#engines = engines;
    (globalThis as { SpeechRecognition?: Engine }).SpeechRecognition = utteranceRecognizer(
      () => this.#by!.engine,
      (spoken) => {
        this.#spoken = spoken;
        if (spoken.tooLong) this.#took();
      },
    );
    annyang.addCallback("result", () => this.#took());
    annyang.addCallback("start", () => this.#started());
    annyang.addCallback("end", () => this.#ended());
    annyang.addCallback("error", (event) => this.#failed(event.error));
  }

  /** Listens until told otherwise. */
  start(): void {
    this.#open = true;
    this.#ends = 0;
    this.#networkErrors = 0;
    this.#listen();
  }
  stop(): void {
    this.#open = false;
    this.#close("off");
  }

  /** The talk button goes down. */
  press(): void {
    clearTimeout(this.#talking);
    this.#from = performance.now();
    this.#until = Number.POSITIVE_INFINITY;
    this.#down = true;
    this.#got = false;
    this.#networkErrors = 0;
    if (this.#listening) this.#say("talking");
    else this.#listen();
  }
  /** The talk button goes up. */
  release(): void {
    if (!this.#down) return;
    this.#down = false;
    if (this.#got) {
      this.#finish();
      return;
    }
    const tapped = performance.now() - this.#from < TAP_MS;
    if (!tapped) this.#until = performance.now();
    clearTimeout(this.#talking);
    this.#talking = window.setTimeout(() => this.#finish(), tapped ? TAP_LISTENS_MS : FINISH_MS);
    if (tapped || this.#open) return;
    // Held, let go, and not even started: nothing can have been heard.
    if (this.#again || !this.#running) this.#finish();
    else annyang.getSpeechRecognizer()?.stop();
  }
  get isTalking(): boolean {
    return this.#until === Number.POSITIVE_INFINITY;
  }
  /** Who listens, or did last. */
  get by(): Listening["by"] | null {
    return this.#by?.by ?? null;
  }

  #listen(): void {
    this.#again = this.#running;
    if (!this.#running) this.#by = this.#engines.now(this.#open);
    if (this.#by === null) {
      this.#close("none");
      return;
    }
    this.#say("starting");
    this.#await();
    if (this.#running) return;
    this.#running = true;
    annyang.start({ autoRestart: this.#open, continuous: true });
  }
  /** A start that does not come is given up; while the browser asks for the microphone, it is waited for longer. */
  #await(): void {
    this.#startedAt = performance.now();
    this.#wordsSinceStart = false;
    clearTimeout(this.#starting);
    const giveUp = () => this.#giveUp("silent");
    this.#starting = window.setTimeout(giveUp, this.#by?.startMs);
    const asked = navigator.permissions?.query({ name: "microphone" as PermissionName });
    asked?.then(
      ({ state }) => {
        if (state !== "prompt" || this.status !== "starting") return;
        clearTimeout(this.#starting);
        this.#starting = window.setTimeout(giveUp, Math.max(ASKED_MS, this.#by?.startMs ?? 0));
      },
      () => {},
    );
  }
  #started(): void {
    this.#listening = true;
    this.#running = true;
    this.#startedAt = performance.now();
    this.#wordsSinceStart = false;
    clearTimeout(this.#starting);
    if (!this.#open && !this.isTalking) this.#finish();
    else this.#say(this.isTalking ? "talking" : "listening");
  }
  #took(): void {
    const spoken = this.#spoken;
    if (!spoken) return;
    this.#spoken = null;
    this.#wordsSinceStart = true;
    this.#ends = 0;
    this.#networkErrors = 0;
    const talk = spoken.began >= this.#from - EARLY_MS && spoken.began <= this.#until;
    this.#told.heard({ ...spoken, talk });
    this.#got ||= talk;
    if (talk && !this.#down) this.#finish();
  }
  /** What was waited for after the button was let go has come, or will not. */
  #finish(): void {
    clearTimeout(this.#talking);
    if (this.isTalking) this.#until = performance.now();
    if (this.#open) this.#say(this.#listening ? "listening" : "starting");
    else this.#close("off");
  }
  #ended(): void {
    clearTimeout(this.#ending);
    const soon = performance.now() - this.#startedAt < SOON_MS && !this.#wordsSinceStart;
    this.#listening = false;
    this.#running = false;
    if (this.#again) {
      this.#listen();
      return;
    }
    if (!this.#open) {
      clearTimeout(this.#starting);
      clearTimeout(this.#talking);
      if (this.isTalking) this.#until = performance.now();
      if (this.status === "listening" || this.status === "talking" || this.status === "starting") this.#say("off");
      return;
    }
    this.#ends = soon ? this.#ends + 1 : 0;
    if (this.#ends >= MAX_ENDS) {
      this.#giveUp("keepsStopping");
      return;
    }
    // annyang starts it again by itself.
    this.#running = true;
    this.#await();
  }
  #failed(error: string): void {
    const known = ERRORS[error];
    if (known) this.#giveUp(known);
    else if (error === "network" && (++this.#networkErrors >= MAX_NETWORK_ERRORS || !this.#open || this.#engines.hasOther(this.#by)))
      this.#giveUp("network");
  }
  /** What listens does not work: another takes its place where there is one. */
  #giveUp(status: VoiceStatus): void {
    const another = !SAME_FOR_ALL.has(status) && this.#by !== null && this.#engines.giveUp(this.#by, this.#open);
    if (another && (this.#open || this.isTalking)) {
      this.#say("starting");
      this.#abort(true);
      return;
    }
    this.#open = false;
    this.#close(status);
  }
  #close(status: VoiceStatus): void {
    clearTimeout(this.#talking);
    this.#from = Number.POSITIVE_INFINITY;
    this.#until = Number.NEGATIVE_INFINITY;
    this.#abort(false);
    this.#say(status);
  }
  /** Lets go of the engine that listens; `again` once it has ended. */
  #abort(again: boolean): void {
    clearTimeout(this.#starting);
    this.#listening = false;
    this.#again = again;
    annyang.abort();
    // Some never say that they ended. After a moment it is taken that they did, or no press would start them again.
    clearTimeout(this.#ending);
    this.#ending = window.setTimeout(() => {
      if (this.#listening || !this.#running) return;
      this.#running = false;
      if (this.#again) this.#listen();
    }, ENDED_MS);
  }
  #say(status: VoiceStatus): void {
    this.status = status;
    this.#told.status(status);
  }
}
