import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { Speaker } from "../../views/voice/mouth.ts";

class Utterance {
  onend?: () => void;
  constructor(readonly text: string) {}
}

let mouth: Speaker;
beforeEach(() => {
  vi.useFakeTimers();
  vi.stubGlobal("window", { setTimeout, speechSynthesis: {} });
  vi.stubGlobal("document", { documentElement: { lang: "en" }, body: { classList: { toggle: () => {} } } });
  vi.stubGlobal("SpeechSynthesisUtterance", Utterance);
  vi.stubGlobal("speechSynthesis", { speak: () => {}, cancel: () => {}, getVoices: () => [{}] });
  mouth = new Speaker();
});
afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});
/** Heard while the guide says something. */
const lost = (heard: string | string[], saying = "Two hands under the top. Count them out loud, everybody.") => {
  mouth.say(saying);
  return mouth.isOwn(performance.now(), [heard].flat());
};

describe("while the guide speaks, what can only stop the work is heard", () => {
  it.each([
    "thunder",
    "I heard thunder",
    "lightning over there",
    "there's a storm warning out",
    "somebody's hurt",
    "Jory is hurt",
    "call 911",
    "everybody out",
    "everybody out now",
    "get everybody out of the tent",
    "stop",
    "hold that rope",
  ])("%s", (heard) => expect(lost(heard)).toBe(false));

  it.each(["next", "eight showing", "it's raining", "under the top", "count them out loud"])("not: %s", (heard) =>
    expect(lost(heard)).toBe(true),
  );
});

describe("its own words are no alarm", () => {
  it("come back whole, in part, or with a word misheard", () => {
    const saying = "Any thunder in the last 30 minutes? Lightning. Nobody goes on before 15:11. Everybody out from under the top.";
    for (const heard of ["thunder in the last 30 minutes", "thunder in the last thirty minutes", "lightning", "everybody out from under"])
      expect(lost(heard, saying), heard).toBe(true);
    expect(lost("thunder the top")).toBe(true);
  });
  it("nor is a guess that a recognizer thinks less likely", () => expect(lost(["under the tarp", "thunder the tarp"])).toBe(true));
});

it("once it has finished, everything is heard again", () => {
  mouth.say("Next.");
  mouth.hush();
  vi.advanceTimersByTime(1000);
  expect(mouth.isOwn(performance.now(), ["next"])).toBe(false);
});
