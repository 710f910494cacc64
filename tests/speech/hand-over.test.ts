import { describe, expect, it } from "vitest";
import { english } from "../../machines/speech/en/english.ts";
import { NOTHING_ASKED } from "../../machines/speech/listening.ts";

const meant = (words: string) => english.understand(words, NOTHING_ASKED);

describe("the lead is handed over in words", () => {
  it.each([
    ["hand over to Maren", "Maren"],
    ["hand over the lead to Maren", "Maren"],
    ["Hand the lead over to Maren.", "Maren"],
    ["I'm handing over to Maren now", "Maren"],
    ["okay, give the lead to Maren", "Maren"],
    ["Maren has the lead", "Maren"],
    ["Maren takes the lead from here", "Maren"],
    ["Maren takes over", "Maren"],
    ["hand over to Zoë-Mae O'Neill", "Zoë-Mae O'Neill"],
    ["hand over to p3", "p3"],
  ])("%s", (words, name) => expect(meant(words)).toEqual({ handOver: name }));

  it.each([
    "who has the lead",
    "nobody has the lead",
    "he has the lead",
    "hand me the rope",
    "hand that over to me",
    "hand it to Maren",
    "give the rope to Maren",
    "the generator has the lead",
    "Maren has the hammer",
    "if Maren takes over",
  ])("not: %s", (words) => expect(meant(words)).not.toHaveProperty("handOver"));
});
