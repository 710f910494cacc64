import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { hashOf } from "../../machines/digest/digest.ts";
import { LETTERS } from "../../machines/digest/letters.ts";
import { DIGEST_LETTERS, findDigest, readDigest, shortDigest, shownDigest } from "../../machines/digest/short-digest.ts";

const hashes = Array.from({ length: 300 }, (_, n) => hashOf(Uint8Array.of(n % 256, n >> 8)));

describe("a short digest", () => {
  it("is the rest of its hash in the letters of codes, in groups of three", () => {
    expect(shownDigest("0".repeat(63).concat("1"))).toBe("222-222-222-222-223");
    expect(shownDigest("0".repeat(62).concat("1f"))).toBe("222-222-222-222-232");
    expect(shownDigest(hashes[0]!)).toMatch(/^(?:[2-9A-HJKMNP-Z]{3}-){4}[2-9A-HJKMNP-Z]{3}$/);
  });
  it("has no letter that is taken for another", () => {
    const seen = new Set(hashes.flatMap((hash) => [...shortDigest(hash)]));
    expect([seen.size, [..."0O1IL"].filter((letter) => seen.has(letter))]).toEqual([LETTERS.length, []]);
  });
  it("changes with any change of its hash: none of many is another's", () => {
    expect(new Set(hashes.map(shortDigest)).size).toBe(hashes.length);
  });
  it("is read however it was written down", () => {
    fc.assert(
      fc.property(fc.constantFrom(...hashes), fc.constantFrom("-", " ", "", "–", " - "), fc.boolean(), (hash, between, lower) => {
        const typed = shownDigest(hash).replaceAll("-", between);
        expect(readDigest(lower ? typed.toLowerCase() : typed)).toEqual({ letters: shortDigest(hash), strange: [], isWhole: true });
      }),
    );
  });
  it.each([
    ["0O1", ["0", "O", "1"], false],
    [`${"2".repeat(DIGEST_LETTERS - 1)}é`, ["É"], true],
    ["", [], false],
  ])("%s is none, and it is said why", (typed, strange, isWhole) => expect(readDigest(typed)).toMatchObject({ strange, isWhole }));
});

describe("a digest is looked up among hashes", () => {
  const misread = (letters: string, ...at: number[]) =>
    [...letters].map((letter, i) => (at.includes(i + 1) ? (letter === "A" ? "B" : "A") : letter)).join("");

  it("and the first that comes to it is given", () => {
    expect(findDigest(shortDigest(hashes[7]!), hashes)).toEqual({ at: 7, digest: shortDigest(hashes[7]!), off: [] });
  });
  it("misread at one or two letters, with where", () => {
    expect(findDigest(misread(shortDigest(hashes[9]!), 4, 15), hashes)).toMatchObject({ at: 9, off: [4, 15] });
  });
  it.each([
    ["misread at three letters", misread(shortDigest(hashes[9]!), 1, 2, 3)],
    ["too short", shortDigest(hashes[9]!).slice(1)],
    ["empty", ""],
  ])("%s it is nobody's", (_what, letters) => expect(findDigest(letters, hashes)).toBeNull());
});
