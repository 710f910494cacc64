import { describe, expect, it } from "vitest";
import { yes } from "../../machines/install/gates.ts";
import { understand } from "../../machines/speech/en/understand.ts";
import { hear } from "../../machines/speech/hear.ts";
import { NOTHING_ASKED } from "../../machines/speech/listening.ts";
import { EVERYWHERE, ears, said } from "../support/ears.ts";
import { stepWith } from "../support/steps.ts";

const warned = stepWith(yes, { wordsKey: "warning" });

/** Into an open microphone, with the button held, and after the wake word: at once, and not read back. */
const raises = (words: string, meant: object) => {
  for (const e of EVERYWHERE)
    for (const heard of [said(words, false, e), said(words, true, e), said(`albatross ${words}`, false, e)])
      expect(heard).toMatchObject({ meant, readBack: false });
};

describe("thunder and lightning, from anybody and in any words", () => {
  it.each([
    "thunder",
    "thunder!",
    "lightning",
    "I heard thunder",
    "heard thunder",
    "that was thunder",
    "I think that was thunder",
    "just heard thunder over by the road",
    "there's lightning over there",
    "lightning to the west",
    "saw lightning",
    "I just saw a flash of lightning",
    "thunder's rolling in",
    "thunder, five minutes ago",
    "oh no, thunder",
    "look, lightning!",
    "watch out, lightning",
    "listen, that's thunder",
    "there's a thunderstorm coming",
    "stop, I heard thunder",
    "hold that rope, lightning",
  ])("%s", (words) => raises(words, { thunder: true }));
});

describe("a warning that was put out", () => {
  it.each([
    "tornado warning",
    "severe thunderstorm warning",
    "there's a warning in force",
    "there's a tornado warning",
    "weather service just put out a warning",
    "storm warning",
    "we've got a storm warning",
    "high wind warning for the county",
    "they issued a severe weather warning",
    "warning's in effect",
    "there's a tornado over there",
    "funnel cloud",
    "there's a severe thunderstorm warning until six tonight",
  ])("%s", (words) => raises(words, { warning: true }));
});

describe("everybody out", () => {
  it.each([
    "everybody out",
    "Everyone out!",
    "everybody out of the tent",
    "everybody out now",
    "everybody out, everybody out",
    "clear the tent",
    "clear the tent now",
    "get everybody out",
    "get them out of the tent",
    "get 'em out from under there",
    "get out of the tent",
    "evacuate",
    "evacuate the tent",
    "people out now",
    "okay guys, everybody out",
    "we need to evacuate",
    "everybody out from under",
    "clear out",
  ])("%s", (words) => raises(words, { everybodyOut: words.replace(/!$/, "") }));
});

describe("somebody is hurt", () => {
  it.each([
    "somebody's hurt",
    "someone is hurt",
    "somebody's hurt over here",
    "somebody got hurt",
    "somebody got hit",
    "he was knocked down",
    "he's not moving",
    "she isn't responding at all",
    "man down",
    "we've got a man down",
    "medic",
    "we need a medic",
    "call nine one one",
    "call 911",
    "somebody call 9-1-1",
    "we need an ambulance",
    "he's hurt",
    "I'm hurt",
    "one of the guys is hurt",
    "he's bleeding",
    "stop, somebody's hurt",
    "somebody's hurt and he's not breathing",
    "he's not breathing",
    "she isn't breathing",
    "he stopped breathing",
    "somebody's hurt, nobody move",
    "nobody move, somebody's hurt",
    "Jory's hurt, don't move him",
    "man down, not moving",
    "somebody's hurt, he's not really responding",
    "somebody's down, no pulse",
    "someone's down under the pole",
    "somebody's down",
    "somebody fell",
    "he fell off the ladder",
    "she's trapped",
  ])("%s", (words) => raises(words, { hurt: words }));
});

describe("rain, which is light", () => {
  it.each([
    "it's raining",
    "it rained",
    "rain started",
    "the rain's started",
    "it's starting to rain",
    "it started raining",
    "starting to rain",
    "it's sprinkling",
    "raining hard",
    "rain",
    "it rained last night",
  ])("%s", (words) => {
    expect(said(words, false, ears(null))).toMatchObject({ meant: { rain: true }, readBack: false });
    expect(said(words, true, ears(warned))).toMatchObject({ meant: { rain: true }, readBack: false });
  });
});

describe("what is denied, asked, or of another day raises nothing", () => {
  const alarms = ["thunder", "warning", "everybodyOut", "hurt", "rain"];
  it.each([
    "no thunder",
    "any lightning?",
    "any lightning",
    "is that thunder",
    "was that thunder?",
    "did you hear thunder",
    "haven't heard any thunder",
    "I didn't hear thunder",
    "the thunder stopped",
    "we had thunder yesterday",
    "thunder in the forecast",
    "if there's lightning we go to the barn",
    "lightning rod",
    "severe thunderstorm watch",
    "no warnings",
    "any warnings?",
    "no warning in force",
    "tornado warning's over",
    "tornado watch",
    "clear that rope",
    "clear the truck",
    "watch your head",
    "it fell off the truck",
    "storm warning expired",
    "put the warning tape up",
    "there's a warning sign on it",
    "warnings clear",
    "check the weather warnings",
    "listen for thunder",
    "watch for lightning",
    "all clear",
    "is everybody out",
    "everybody's out",
    "everybody is out",
    "everyone's out of the tent",
    "is the tent clear",
    "the tent's clear",
    "don't evacuate",
    "four out",
    "four out, nobody under",
    "nobody move",
    "don't move that pole",
    "the generator's not talking to me",
    "take the trash out",
    "get 'em out",
    "get the stakes out",
    "lightning later tonight",
    "put your hand down",
    "where's the first aid",
    "somebody's gonna get hurt",
    "nobody's hurt",
    "no one is hurt",
    "is anybody hurt",
    "anybody hurt?",
    "is somebody hurt",
    "he's not hurt",
    "he's not moving the truck",
    "it's not moving",
    "that's gonna hurt",
    "it hurts",
    "if somebody's hurt call 911",
    "the pole is down",
    "walls are down",
    "the cloth is down",
    "it's not raining",
    "is it raining",
    "no rain",
    "rain tomorrow",
    "don't call 911",
    "note: thunder scared the horses",
  ])("%s", (words) => {
    for (const e of EVERYWHERE)
      for (const talk of [false, true]) {
        const heard = said(words, talk, e);
        if ("meant" in heard) for (const alarm of alarms) expect(heard.meant).not.toHaveProperty(alarm);
      }
  });
});

describe("an alarm among the alternatives", () => {
  it("counts in any of them if the best means nothing", () =>
    expect(said(["I heard under", "I heard thunder"], false, ears(null))).toMatchObject({
      words: "I heard thunder",
      meant: { thunder: true },
    }));
  it("does not count against a best one that means something", () =>
    expect(said(["what's left", "thunder"], false, ears(null))).toMatchObject({ meant: { question: { asks: "whatsLeft" } } }));
  it("a hold comes before it", () =>
    expect(said(["thunder", "hold"], false, ears(null))).toMatchObject({ meant: { intent: { type: "hold" } } }));
});

describe("thunder taken back", () => {
  it.each([
    ["that wasn't thunder, it was a truck", "it was a truck"],
    ["no thunder, they're dumping gravel", "they're dumping gravel"],
    ["okay, that was no thunder, it was the generator", "it was the generator"],
    ["it was not lightning, somebody took a picture", "somebody took a picture"],
    ["false alarm on the thunder, it was fireworks", "it was fireworks"],
  ])("%s", (said, because) => {
    expect(understand(said, NOTHING_ASKED)).toEqual({ noThunder: because });
    const talked = hear({ alternatives: [said], talk: true }, ears(null));
    expect(talked).toMatchObject({ meant: { noThunder: because }, readBack: true });
    expect(hear({ alternatives: [said], talk: false }, ears(null))).toMatchObject({ leftAlone: "wakeWord" });
  });
  it.each([
    "no thunder",
    "that wasn't thunder",
    "no thunder yet, keep going",
    "I think that wasn't thunder, maybe a truck",
    "no thunder around here, right",
  ])("%s takes nothing back: no reason, or no certainty", (said) =>
    expect(understand(said, NOTHING_ASKED)).not.toHaveProperty("noThunder"),
  );
});
