import { stayingHere } from "./engine.ts";
import type { OwnEar } from "./own/own-ear.ts";
import { ownEngine } from "./own/own-engine.ts";
import type { Engine } from "./recognizer.ts";

/**
 * Who listens: the browser, which sends sound to whoever it likes; the browser on the phone itself; or our own ear, on the phone too. How
 * long it may take to start: ours has to be loaded first.
 */
export type Listening = { readonly by: "browser" | "browserHere" | "own"; readonly engine: Engine; readonly startMs: number };

/** A recognizer that has not started by then will not: on some phones it is there and does nothing. */
const START_MS = 3000;
/** So long may our own take, the first time on a slow line. */
const LOAD_MS = 120_000;

export const byBrowser = (engine: Engine): Listening => ({ by: "browser", engine, startMs: START_MS });
/** Told to stay on the phone; `phrases` says what can be said, where the browser takes hints. */
export const byBrowserHere = (engine: Engine, phrases: () => readonly string[]): Listening => ({
  by: "browserHere",
  engine: stayingHere(engine, phrases),
  startMs: START_MS,
});
export const byOwnEar = (ear: OwnEar): Listening => ({ by: "own", engine: ownEngine(ear), startMs: LOAD_MS });

/** Whom the one who holds the phone wants to listen: either, as it fits. */
export type Preferred = "either" | "own" | "browser";

/** The engines of a phone, and which one listens now. */
export class Engines {
  readonly #browser: Listening | null;
  #own: Listening | null = null;
  readonly #failed = new Set<Listening>();
  readonly #preferred: () => Preferred;

  constructor(browser: Listening | null, preferred: () => Preferred) {
    this.#browser = browser;
    this.#preferred = preferred;
    // What failed without a network may work with one.
    globalThis.addEventListener?.("online", () => this.#failed.clear());
  }

  /** This phone's own ear, once it is known where its files are. */
  set own(own: Listening) {
    this.#own = own;
  }

  /**
   * Who listens now; `null` where nobody can. Without signal the browser's own is no use unless it works on the phone. `open`: all the
   * time; some phones' own engine beeps then at every start.
   */
  now(open: boolean): Listening | null {
    const [browser, own] = [this.#browser, this.#own].map((engine) => (engine && this.#failed.has(engine) ? null : engine));
    const preferred = this.#preferred();
    if (preferred === "browser") return browser ?? own ?? null;
    // Whoever chose it was told that no sound leaves the phone: nobody takes its place.
    if (preferred === "own") return own ?? null;
    const unfit = !browser || (browser.by === "browser" && !navigator.onLine) || (open && BEEPS.test(navigator.userAgent));
    return (unfit ? (own ?? browser) : browser) ?? null;
  }

  /** Whether somebody else could listen. */
  hasOther(than: Listening | null): boolean {
    return [this.#browser, this.#own].some((engine) => engine !== null && engine !== than && !this.#failed.has(engine));
  }

  /** The one that listens does not work here. Tells whether another is left. */
  giveUp(failed: Listening, open: boolean): boolean {
    this.#failed.add(failed);
    if (this.now(open) !== null) return true;
    // Nobody is left: next time each is tried again.
    this.#failed.clear();
    return false;
  }
}

/** Phones whose browser beeps whenever it starts to listen, and stops after a few seconds of quiet. */
const BEEPS = /Android/;
