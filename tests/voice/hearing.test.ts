import { describe, expect, it } from "vitest";
import type { Decoder, Told } from "../../views/voice/own/decoder.ts";
import type { Denoiser } from "../../views/voice/own/denoiser.ts";
import { FITS } from "../../views/voice/own/fits.ts";
import type { EarGrammar } from "../../views/voice/own/grammar.ts";
import { Hearing } from "../../views/voice/own/hearing.ts";

const GRAMMAR: EarGrammar = {
  always: { open: ["albatross next"], talk: ["next", "carry on"] },
  answers: { open: ["albatross yes"], talk: ["yes"] },
  holds: ["hold"],
  releases: ["carry on"],
  ways: {},
};
const SECOND = 48_000;
const hiss = (seconds: number, peak: number) => Float32Array.from({ length: seconds * SECOND }, (_, i) => peak * Math.sin(i * i));
const QUIET = 0.001;

type Hears = { readonly words: string; readonly fit: number };

/**
 * An ear with a decoder that hears what a test says, and a denoiser that takes every loud sound for speech. `told` is what the ear tells, and
 * `asked` the grammars that were listened with.
 */
function ear(...hears: readonly Hears[]) {
  const told: string[] = [];
  const asked: string[][] = [];
  let ids = 0;
  const decoder = {
    learn: () => {},
    tell: (): Told => ({ id: ids++ }),
    tellSpotting: (): Told => ({ id: ids++ }),
    decode: (grammars: readonly Told[]) => {
      asked.push(grammars.map(({ id }) => NAMES[id]!));
      const of = (words: string) => grammars.find(({ id }) => NAMES[id]!.startsWith("holds") === (words === "hold"))!;
      return hears.map(({ words, fit }) => ({ of: of(words), words, fit }));
    },
  } as unknown as Decoder;
  const denoiser = { take: (frame: Float32Array) => ({ sound: frame, speech: Math.max(...frame) > 0.01 ? 1 : 0 }) } as unknown as Denoiser;
  const hearing = new Hearing({ decoder, fits: FITS.built }, denoiser, {
    began: () => told.push("began"),
    heard: ({ words }) => told.push(words),
    nothing: (why) => told.push(why),
    level: () => {},
  });
  hearing.expect(GRAMMAR);
  hearing.take(hiss(1.5, QUIET));
  return { hearing, told, asked };
}
/** In the order in which the decoder is told them. */
const NAMES = ["holds anywhere", "holds", "always open", "answers open", "always talk", "answers talk"];
const say = (hearing: Hearing, peak = 0.3, seconds = 0.6) => {
  hearing.take(hiss(seconds, peak));
  hearing.take(hiss(0.6, QUIET));
};

describe("what is said into this phone's own ear", () => {
  it("is told when it is over, as the words that fit", () => {
    const { hearing, told } = ear({ words: "albatross next", fit: 0 });
    hearing.take(hiss(0.6, 0.3));
    expect(told).toEqual(["began"]);
    hearing.take(hiss(0.6, QUIET));
    expect(told).toEqual(["began", "albatross next"]);
  });
  it("through an open microphone is looked for with the wake word, with the button held without", () => {
    const { hearing, asked } = ear({ words: "next", fit: 0 });
    say(hearing);
    hearing.talk = true;
    say(hearing);
    expect(asked).toEqual([
      ["holds", "always open", "answers open"],
      ["holds", "always talk", "answers talk"],
    ]);
  });
  it("counts as said with the button held where it was held for a part of it", () => {
    const { hearing, asked } = ear({ words: "next", fit: 0 });
    hearing.take(hiss(0.3, 0.3));
    hearing.talk = true;
    hearing.take(hiss(0.3, 0.3));
    hearing.talk = false;
    hearing.take(hiss(0.6, QUIET));
    expect(asked).toEqual([["holds", "always talk", "answers talk"]]);
  });
  it("is over where the button is let go", () => {
    const { hearing, told } = ear({ words: "next", fit: 0 });
    hearing.take(hiss(0.6, 0.3));
    hearing.cut();
    expect(told).toEqual(["began", "next"]);
  });
  it("is looked for at the first pause, while it is awaited whether that is its end, and then told at once", () => {
    const { hearing, told, asked } = ear({ words: "albatross next", fit: 0 });
    hearing.take(hiss(0.6, 0.3));
    hearing.take(hiss(0.24, QUIET));
    expect([asked.length, told]).toEqual([1, ["began"]]);
    hearing.take(hiss(0.3, QUIET));
    expect([asked.length, told]).toEqual([1, ["began", "albatross next"]]);
  });
  it("is looked for anew where it went on after a pause, or the button came down in it", () => {
    const on = ear({ words: "next", fit: 0 });
    on.hearing.take(hiss(0.6, 0.3));
    on.hearing.take(hiss(0.24, QUIET));
    on.hearing.take(hiss(0.4, 0.3));
    on.hearing.cut();
    expect(on.asked.length).toBe(2);
    const button = ear({ words: "next", fit: 0 });
    button.hearing.take(hiss(0.6, 0.3));
    button.hearing.take(hiss(0.24, QUIET));
    button.hearing.talk = true;
    button.hearing.take(hiss(0.3, QUIET));
    expect(button.asked.map(([, always]) => always)).toEqual(["always open", "always talk"]);
    const call = ear({ words: "next", fit: 0 });
    call.hearing.take(hiss(0.6, 0.3));
    call.hearing.take(hiss(0.24, QUIET));
    call.hearing.expect({ ...GRAMMAR, answers: { open: ["albatross no"], talk: ["no"] } });
    call.hearing.take(hiss(0.3, QUIET));
    expect(call.asked.length).toBe(2);
  });
  it("is nothing where it fits nothing that can be said", () => {
    const { hearing, told } = ear({ words: "next", fit: -60 });
    say(hearing);
    expect(told).toEqual(["began", "unfit"]);
  });
  it("is a hold where a hold fits nearly as well, and all the more where the other would let go of one", () => {
    const saidAs = (...hears: readonly Hears[]) => {
      const { hearing, told } = ear(...hears);
      hearing.talk = true;
      say(hearing);
      return told.at(-1);
    };
    expect(saidAs({ words: "next", fit: -4 }, { words: "hold", fit: -10 })).toBe("hold");
    expect(saidAs({ words: "next", fit: -4 }, { words: "hold", fit: -14 })).toBe("next");
    expect(saidAs({ words: "carry on", fit: -4 }, { words: "hold", fit: -14 })).toBe("hold");
    expect(saidAs({ words: "carry on", fit: 5 }, { words: "hold", fit: -60 })).toBe("carry on");
  });
  it("is nothing where the place is about as loud, but for a hold", () => {
    const loud = ear({ words: "albatross next", fit: 0 });
    const held = ear({ words: "hold", fit: 0 });
    for (const { hearing } of [loud, held]) {
      hearing.take(hiss(4, 0.009));
      say(hearing, 0.012);
    }
    expect(loud.told).toEqual(["began", "tooLoud"]);
    expect(held.told).toEqual(["began", "hold"]);
  });
  it("is talk among the crew where it goes on for longer than six seconds", () => {
    const { hearing, told, asked } = ear({ words: "hold", fit: 0 });
    hearing.take(hiss(6, 0.3));
    expect(told.slice(0, 2)).toEqual(["began", "tooLong"]);
    expect(asked).toEqual([]);
  });
});

describe("while the guide speaks", () => {
  it("only a hold is listened for, by itself or anywhere in what is heard", () => {
    const { hearing, told, asked } = ear({ words: "hold", fit: 0 });
    hearing.speaking = true;
    say(hearing, 0.3, 1);
    expect(told).toContain("hold");
    expect(new Set(asked.flat())).toEqual(new Set(["holds", "holds anywhere"]));
  });
  it("its own voice is nothing", () => {
    const { hearing, told } = ear({ words: "hold", fit: -30 });
    hearing.speaking = true;
    say(hearing, 0.3, 3);
    expect(told.filter((is) => is !== "began")).toEqual([]);
  });
});
