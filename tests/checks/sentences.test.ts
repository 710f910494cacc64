import { describe, expect, it } from "vitest";
import type { Heard } from "../../machines/speech/hear.ts";
import { EVERYWHERE, said } from "../support/ears.ts";

/**
 * IEEE 297-1969, recommended practice for speech quality measurements: the "Harvard" sentences, lists 1 to 3 (read in public scripts),
 * without punctuation. The tenth is also printed without its article.
 */
const SENTENCES = [
  "The birch canoe slid on the smooth planks",
  "Glue the sheet to the dark blue background",
  "It's easy to tell the depth of a well",
  "These days a chicken leg is a rare dish",
  "Rice is often served in round bowls",
  "The juice of lemons makes fine punch",
  "The box was thrown beside the parked truck",
  "The hogs were fed chopped corn and garbage",
  "Four hours of steady work faced us",
  "A large size in stockings is hard to sell",
  "The boy was there when the sun rose",
  "A rod is used to catch pink salmon",
  "The source of the huge river is the clear spring",
  "Kick the ball straight and follow through",
  "Help the woman get back to her feet",
  "A pot of tea helps to pass the evening",
  "Smoky fires lack flame and heat",
  "The soft cushion broke the man's fall",
  "The salt breeze came across from the sea",
  "The girl at the booth sold fifty bonds",
  "The small pup gnawed a hole in the sock",
  "The fish twisted and turned on the bent hook",
  "Press the pants and sew a button on the vest",
  "The swan dive was far short of perfect",
  "The beauty of the view stunned the young boy",
  "Two blue fish swam in the tank",
  "Her purse was full of useless trash",
  "The colt reared and threw the tall rider",
  "It snowed, rained and hailed the same morning",
  "Read verse out loud for pleasure",
  "Large size in stockings is hard to sell",
];

const isLeftAlone = (heard: Heard): boolean => ("meant" in heard ? "notUnderstood" in heard.meant : heard.leftAlone === "chatter");

describe("thirty sentences that mean nothing to the guide, at each kind of call", () => {
  it.each([
    ["into an open microphone", false],
    ["with the talk button held", true],
  ])("%s no command comes of any", (_how, talk) => {
    const fired = SENTENCES.flatMap((words) => EVERYWHERE.map((at) => said(words, talk, at)).filter((heard) => !isLeftAlone(heard)));
    expect(fired).toEqual([]);
  });
});
