import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { type Utterance, utteranceRecognizer } from "../../views/voice/recognizer.ts";

/** What an engine gives as a result: its readings; nothing final yet, final, or final without confidence in it. */
type Given = { readonly texts: readonly string[]; readonly is: "interim" | "final" | "unsure" };

/** An engine of the W3C's shape that does what a test says, and nothing by itself. */
class Engine {
  static now: Engine;
  onstart?: () => void;
  onend?: () => void;
  onspeechstart?: () => void;
  onresult?: (event: { resultIndex: number; results: unknown[] }) => void;
  results: unknown[] = [];
  constructor() {
    Engine.now = this;
  }
  start() {
    this.results = [];
    this.onstart?.();
  }
  /** A result at a place: the next one where none is said. */
  give(text: string | readonly string[], is: Given["is"] = "final", place = this.results.length) {
    const readings = [text].flat().map((transcript) => ({ transcript, confidence: is === "final" ? 0.9 : 0 }));
    this.results = [...this.results];
    this.results[place] = Object.assign(readings, { isFinal: is !== "interim" });
    this.onresult?.({ resultIndex: place, results: this.results });
  }
  /** Everything so far once more, from the first place on. */
  repeat() {
    this.onresult?.({ resultIndex: 0, results: this.results });
  }
}

let heard: Utterance[];
let engine: Engine;
beforeEach(() => {
  vi.useFakeTimers();
  vi.stubGlobal("window", globalThis);
  vi.stubGlobal("document", { documentElement: { lang: "en" } });
  heard = [];
  const Recognizer = utteranceRecognizer(
    () => Engine as never,
    (utterance) => heard.push(utterance),
  );
  new Recognizer().start();
  engine = Engine.now;
});
afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});
const texts = () => heard.map((h) => h.alternatives[0]);
const ids = () => new Set(heard.map((h) => h.id)).size;
/** Nobody says anything for so many seconds, and no engine is as slow as that. */
const pass = (seconds: number) => vi.advanceTimersByTime(seconds * 1000);
/** Speech is heard to begin, and then there are words. */
const say = (...given: Parameters<Engine["give"]>) => {
  engine.onspeechstart?.();
  pass(1);
  engine.give(...given);
};

describe("one thing said is passed on once, however slowly its result comes again", () => {
  it("at its place and from the first place on", () => {
    say("next");
    for (let n = 0; n < 2; n++) {
      pass(5);
      engine.repeat();
    }
    expect(texts()).toEqual(["next"]);
  });
  it("as one more result, without a new start of speech", () => {
    say("next");
    for (let n = 0; n < 2; n++) {
      pass(5);
      engine.give("next");
    }
    expect(texts()).toEqual(["next"]);
  });
  it("put otherwise at the same place, without a new start of speech", () => {
    say("next");
    pass(5);
    engine.give("next one", "final", 0);
    expect(texts()).toEqual(["next"]);
  });
  it("joined with what was said before it, just before the engine ends", () => {
    for (const text of ["back", "next", "next"]) say(text);
    pass(30);
    engine.give("next next");
    engine.give("back next next");
    engine.onend?.();
    expect(texts()).toEqual(["back", "next", "next"]);
  });
  it("while the next thing is being said", () => {
    say("next");
    engine.give("ba", "interim");
    engine.repeat();
    engine.give("back", "final", 1);
    expect(texts()).toEqual(["next", "back"]);
  });
});

describe("each thing said for itself is passed on, and is one of its own", () => {
  it.each<[string, () => void]>([
    ["after a new start of speech", () => say("next")],
    [
      "by an engine that tells of its start but once, and gives halves",
      () => {
        engine.give("ne", "interim");
        engine.give("next", "final", engine.results.length - 1);
      },
    ],
    [
      "by an engine that tells of its start but once, and gives halves at the same place again",
      () => {
        engine.give("next", "interim", 0);
        engine.give("next", "final", 0);
      },
    ],
    [
      "by an engine that starts over for each",
      () => {
        engine.onend?.();
        engine.start();
        engine.give("next");
      },
    ],
  ])("the same words again, %s", (_, again) => {
    say("next");
    again();
    expect(texts()).toEqual(["next", "next"]);
    expect(ids()).toBe(2);
  });
  it("other words, with no start of speech at all", () => {
    engine.give("next");
    engine.give("back");
    expect(texts()).toEqual(["next", "back"]);
    expect(ids()).toBe(2);
  });
  it("two words that were said apart before, now in one", () => {
    for (const text of ["five", "showing"]) say(text);
    say("five showing");
    expect(texts()).toEqual(["five", "showing", "five showing"]);
  });
});

describe("a final without confidence", () => {
  it("waits for what it grows into", () => {
    engine.onspeechstart?.();
    for (const text of ["next", "next to", "next to the pole"]) engine.give(text, "unsure");
    expect(texts()).toEqual([]);
    pass(1);
    expect(texts()).toEqual(["next to the pole"]);
  });
  it("is given again and passed on once", () => {
    say("next", "unsure");
    pass(5);
    engine.repeat();
    engine.give("next", "unsure");
    pass(5);
    expect(texts()).toEqual(["next"]);
  });
  it("is whole when the engine ends", () => {
    say("next", "unsure");
    engine.onend?.();
    expect(texts()).toEqual(["next"]);
  });
  it("that holds waits for nothing", () => {
    say("hold", "unsure");
    expect(texts()).toEqual(["hold"]);
  });
});

describe("a hold is never taken for what was said before", () => {
  it("where the result that was passed on grows into one at the same place", () => {
    say("the");
    engine.give("stop stop", "final", 0);
    expect(texts()).toEqual(["the", "stop stop"]);
    expect(ids()).toBe(2);
  });
  it("in ten kilobytes of words", () => {
    say(`${"and so on ".repeat(1000)}stop stop`);
    expect(texts()).toEqual(["stop stop"]);
  });
});

it("ten kilobytes of other words are passed on as too long", () => {
  say("next ".repeat(2000));
  expect(heard).toMatchObject([{ alternatives: [], tooLong: true }]);
});

it("an utterance began when its speech was heard to begin, or a little before its first words", () => {
  pass(10);
  say("next");
  expect(performance.now() - heard[0]!.began).toBe(1000);
  engine.give("ba", "interim");
  const first = performance.now();
  pass(2);
  engine.give("back", "final", 1);
  expect(first - heard[1]!.began).toBe(800);
});
