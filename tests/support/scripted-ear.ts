import type { Page } from "playwright-core";

/** How the scripted recognizer behaves: as it should, or in one of the ways in which real ones let people down. */
export type EarMode = "good" | "denied" | "noMicrophone" | "silent" | "stops" | "network" | "neverEnds" | "none";

type Said = {
  readonly alternatives: readonly string[];
  /** The words of speech that was heard to begin before. */
  readonly begun?: boolean;
  /** How often the same result is given, and how many ms apart. */
  readonly times?: number;
  readonly apartMs?: number;
  /** As some phones do: each longer half of it is called final, without confidence. */
  readonly growing?: boolean;
};
type Window = {
  ear: { begin: () => void; say: (said: Said) => void; active: boolean };
  spoken: string[];
  tongue: { slow: boolean; end: () => void };
};

/**
 * Runs in the page before its own script: a recognizer that hears what a test says, and a tongue that notes what the guide
 * speaks. Both are of the W3C's shape.
 */
export function scriptedEar(mode: EarMode): void {
  const world = window as unknown as Window & Record<string, unknown>;
  type Handler = ((event: object) => void) | null;
  let current: Recognizer | null = null;
  /** The one that heard speech begin: it has its words even when it is told to stop meanwhile. */
  let began: Recognizer | null = null;
  class Recognizer {
    continuous = false;
    interimResults = false;
    lang = "";
    maxAlternatives = 1;
    onstart: Handler = null;
    onend: Handler = null;
    onerror: Handler = null;
    onresult: Handler = null;
    onspeechstart: Handler = null;
    onsoundstart: Handler = null;
    running = false;
    results: object[] = [];
    start() {
      if (this.running) throw new DOMException("already started", "InvalidStateError");
      this.running = true;
      this.stopping = false;
      this.results = [];
      current = this;
      world.ear.active = true;
      const error = { denied: "not-allowed", noMicrophone: "audio-capture", network: "network" }[mode as "denied"];
      if (mode === "silent") return;
      setTimeout(() => {
        if (!this.running) return;
        if (!error) this.onstart?.({});
        if (error) this.onerror?.({ error });
        if (error || mode === "stops") this.end();
      }, 0);
    }
    stopping = false;
    /** As the standard says: the words of speech that has begun come first, and then the end. */
    stop() {
      if (mode === "neverEnds") return;
      this.stopping = true;
      if (began !== this) setTimeout(() => this.end(), 0);
    }
    abort() {
      setTimeout(() => this.end(), 0);
    }
    end() {
      if (!this.running) return;
      this.running = false;
      world.ear.active = false;
      this.onend?.({});
    }
  }
  const result = (alternatives: readonly string[], confidence: number) =>
    Object.assign(
      alternatives.map((transcript) => ({ transcript, confidence })),
      { isFinal: true },
    );
  world.ear = {
    active: false,
    begin: () => {
      if (!current?.running) throw new Error("nobody is listening");
      began = current;
      current.onspeechstart?.({});
    },
    say: ({ alternatives, begun = false, times = 1, apartMs = 0, growing = false }) => {
      if (!begun) world.ear.begin();
      const ear = began;
      if (!ear) throw new Error("nothing was begun");
      const give = (texts: readonly string[], confidence: number) => {
        ear.results = [...ear.results, result(texts, confidence)];
        ear.onresult?.({ resultIndex: ear.results.length - 1, results: ear.results });
      };
      const words = (alternatives[0] ?? "").split(" ");
      if (growing) for (let n = 1; n <= words.length; n++) give([words.slice(0, n).join(" ")], 0);
      else give(alternatives, 0.9);
      // The same again: from the first place, and as one more.
      const again = () => {
        ear.onresult?.({ resultIndex: 0, results: ear.results });
        give(alternatives, 0.9);
      };
      for (let n = 1; n < times; n++) setTimeout(again, n * apartMs);
      began = null;
      if (ear.stopping) setTimeout(() => ear.end(), times * apartMs);
    },
  };
  const there = mode === "none" ? undefined : Recognizer;
  world.SpeechRecognition = there;
  world.webkitSpeechRecognition = there;

  world.spoken = [];
  let saying: SpeechSynthesisUtterance | null = null;
  const end = () => {
    const said = saying;
    saying = null;
    said?.onend?.({} as SpeechSynthesisEvent);
  };
  world.tongue = { slow: false, end };
  Object.defineProperty(window, "speechSynthesis", {
    value: {
      getVoices: () => [{ name: "test", lang: "en" }],
      speak: (utterance: SpeechSynthesisUtterance) => {
        if (utterance.text === "") return;
        world.spoken.push(utterance.text);
        saying = utterance;
        if (!world.tongue.slow) setTimeout(end, 0);
      },
      cancel: () => {
        saying = null;
      },
    },
  });
}

type Went = { readonly went: string; readonly notice: string };
const caption = (page: Page) => page.locator("#heard").getAttribute("data-reply");

/** So long after the guide's last word, or after somebody else moved the call, what is said is meant for what is shown. */
const SETTLED_MS = 500;

/** Lets the guide finish, says something into a phone that listens, and waits until the guide has answered that phone. */
export async function speak(page: Page, words: string | readonly string[]): Promise<Went> {
  await settled(page);
  return answered(page, words);
}

/** Nobody waits: it is the phone's own clock that goes on. */
async function settled(page: Page): Promise<void> {
  await page.clock.fastForward(SETTLED_MS);
  await page.locator("body:not(.speaking)").waitFor({ state: "attached" });
}

/** Like a person, says it again where the screen had moved in the moment before. */
async function answered(page: Page, words: string | readonly string[]): Promise<Went> {
  for (let tries = 0; ; tries++) {
    if (tries > 0) await settled(page);
    const before = await caption(page);
    await sayInto(page, { alternatives: [words].flat() });
    await page.locator(`#heard:not([data-reply="${before}"])`).waitFor({ state: "attached" });
    const went = {
      went: (await page.locator("#heard").getAttribute("data-went")) ?? "",
      notice: (await page.locator("#notice").textContent()) ?? "",
    };
    if (tries === 50 || went.went !== "refused" || !went.notice.startsWith("Already moved on")) return went;
  }
}

/** Holds the talk button, says it, waits for the guide's answer, and lets go. */
export async function talk(page: Page, words: string | readonly string[]): Promise<Went> {
  await page.clock.fastForward(SETTLED_MS);
  const button = (await page.locator("[data-talk]").boundingBox())!;
  await page.mouse.move(button.x + button.width / 2, button.y + button.height / 2);
  await page.mouse.down();
  await page.locator('body[data-voice="talking"]').waitFor({ state: "attached" });
  const told = await answered(page, words);
  await page.mouse.up();
  await page.locator('body:not([data-voice="talking"])').waitFor({ state: "attached" });
  return told;
}

/** Begins to say something: its words come with `begun`. */
export const beginInto = (page: Page): Promise<void> => page.evaluate(() => (window as unknown as Window).ear.begin());

/** Says something and waits for nothing. */
export const sayInto = (page: Page, said: Said): Promise<void> => page.evaluate((s) => (window as unknown as Window).ear.say(s), said);

/** What the guide has spoken on a phone. */
export const spoken = (page: Page): Promise<string[]> => page.evaluate(() => (window as unknown as Window).spoken);

/** The guide's tongue: slow to finish until it is told to. */
export const tongue = (page: Page, slow: boolean): Promise<void> =>
  page.evaluate((is) => {
    const { tongue } = window as unknown as Window;
    tongue.slow = is;
    if (!is) tongue.end();
  }, slow);

/** Turns listening on, as its holder does under More, and comes back to the call. */
export async function listenByMore(page: Page): Promise<void> {
  await page.click("text=More");
  await page.click("text=Settings");
  await page.locator('[data-setting="listens"]').click();
  await page.click("text=Back to the call");
  await listening(page);
}

/** The same as it was left on that phone before. */
export async function listen(page: Page): Promise<void> {
  await page.evaluate(() => localStorage.setItem("ridgecall.listen", "yes"));
  await page.reload();
  await listening(page);
}
const listening = (page: Page) => page.locator('body[data-voice="listening"]').waitFor({ state: "attached" });
