import { NUMBER } from "../../../machines/speech/sayable.ts";
import type { EarGrammar, Phrases } from "./grammar.ts";
import type { HeardWords, Unheard } from "./hearing.ts";
import type { EarFiles, EngineTrouble, FromWorker, ToWorker } from "./messages.ts";
import { type Microphone, openMicrophone } from "./microphone.ts";

/** What this phone's own ear tells: as it happens, to whoever listens. */
export type EarTold = {
  readonly began: () => void;
  readonly heard: (heard: HeardWords) => void;
  /** All that was said before `cut` has been told. */
  readonly cut: () => void;
  /** The phone took the microphone away. */
  readonly gone: () => void;
  readonly trouble: (trouble: EngineTrouble) => void;
};
/** How loud it is here, in dB: now, and the noise of the place. */
export type SoundLevel = { readonly levelDb: number; readonly floorDb: number };

/** What is told besides, whoever listens: how loud it is here, and that nothing came of speech. */
export type EarShown = { readonly loudness: (loudness: SoundLevel) => void; readonly nothing: (why: Unheard) => void };

const NOTHING: Phrases = { open: [], talk: [] };

/** Not used for so long, the microphone is let go: a phone shows that it is on. */
const IDLE_MS = 20_000;
/** An engine that gives no sign of life for so long, though sound comes in, has gone. Loading is waited for longer. */
const [SILENT_MS, LOAD_MS] = [20_000, 120_000];

/** The engine in its worker and the microphone before it: one a page, warm between one word and the next. */
export class OwnEar {
  readonly #files: EarFiles;
  readonly #shown: EarShown;
  #told: EarTold | null = null;
  #worker: Worker | null = null;
  #ready: Promise<void> | null = null;
  #microphone: Promise<Microphone> | null = null;
  #grammar: EarGrammar | null = null;
  #how = { talk: false, speaking: false };
  #idle: number | undefined;
  #alive: number | undefined;

  /** Told when it is loaded: from then on it has to know what can be said. */
  onUsed = () => {};

  constructor(files: EarFiles, shown: EarShown) {
    this.#files = files;
    this.#shown = shown;
  }
  get isUsed(): boolean {
    return this.#worker !== null;
  }
  /** What can be said at this call, as far as it is known here. */
  get phrases(): readonly string[] {
    const { answers, always } = this.#grammar ?? { answers: NOTHING, always: NOTHING };
    return [...answers.talk, ...always.talk].filter((phrase) => !phrase.includes(NUMBER));
  }

  /** Loads the engine, so that the first word finds it there. Rejects with an `EngineTrouble`. */
  load(): Promise<void> {
    this.#ready ??= new Promise((resolve, reject) => {
      const worker = new Worker(this.#files.worker);
      this.#worker = worker;
      const fail = (trouble: EngineTrouble) => {
        this.#drop();
        reject(trouble);
        this.#told?.trouble(trouble);
      };
      this.#watch(LOAD_MS, fail);
      worker.onerror = () => fail("engineFailed");
      worker.onmessage = ({ data }: MessageEvent<FromWorker>) => {
        if (data.is === "ready") {
          clearTimeout(this.#alive);
          resolve();
        } else if (data.is === "trouble") fail(data.trouble);
        else {
          if (this.#microphone) this.#watch(SILENT_MS, fail);
          this.#hear(data);
        }
      };
      this.#send({ is: "load", files: this.#files });
      if (this.#grammar) this.#send({ is: "expect", grammar: this.#grammar });
      this.#send({ is: "how", ...this.#how });
      this.onUsed();
    });
    return this.#ready;
  }

  /** Listens, and tells `told` from now on. Rejects where there is no engine or no microphone. */
  async open(told: EarTold): Promise<void> {
    clearTimeout(this.#idle);
    this.#told = told;
    await this.load();
    this.#microphone ??= this.#openMicrophone();
    await this.#microphone;
    // Nobody waits for it any more.
    if (this.#told !== told) this.close(told);
  }
  /** No more is said; what has been said is still told, and then `cut`. */
  cut(): void {
    this.#send({ is: "cut" });
  }
  /** Nobody is told any more. The microphone is let go unless somebody listens again soon. */
  close(told: EarTold): void {
    if (this.#told === told) this.#told = null;
    clearTimeout(this.#idle);
    this.#idle = window.setTimeout(() => this.#told === null && this.#letGo(), IDLE_MS);
  }

  /** Lets go of everything: it is not listened with again. */
  end(): void {
    this.#drop();
  }

  /** What can be said at this call. */
  expect(grammar: EarGrammar): void {
    this.#grammar = grammar;
    this.#send({ is: "expect", grammar });
  }
  /** Whether the talk button is held, and whether the guide speaks. */
  how(how: Partial<{ talk: boolean; speaking: boolean }>): void {
    this.#how = { ...this.#how, ...how };
    this.#send({ is: "how", ...this.#how });
  }

  async #openMicrophone(): Promise<Microphone> {
    try {
      const microphone = await openMicrophone(this.#files.worklet, () => {
        this.#letGo();
        this.#told?.gone();
      });
      this.#send({ is: "sound", port: microphone.sound }, [microphone.sound]);
      return microphone;
    } catch (error) {
      this.#microphone = null;
      throw error;
    }
  }
  #hear(data: Exclude<FromWorker, { is: "ready" | "trouble" }>): void {
    if (data.is === "level") this.#shown.loudness(data);
    else if (data.is === "heard") this.#told?.heard(data);
    else if (data.is === "nothing") this.#told && this.#shown.nothing(data.why);
    else this.#told?.[data.is]();
  }
  #send(message: ToWorker, transfer: Transferable[] = []): void {
    this.#worker?.postMessage(message, transfer);
  }
  #watch(ms: number, fail: (trouble: EngineTrouble) => void): void {
    clearTimeout(this.#alive);
    this.#alive = window.setTimeout(() => document.visibilityState === "visible" && fail("engineFailed"), ms);
  }
  #letGo(): void {
    clearTimeout(this.#alive);
    this.#microphone?.then(({ close }) => close()).catch(() => {});
    this.#microphone = null;
  }
  /** The next word starts it over. */
  #drop(): void {
    this.#letGo();
    this.#worker?.terminate();
    this.#worker = null;
    this.#ready = null;
  }
}
