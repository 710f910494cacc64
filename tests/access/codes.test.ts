import { describe, expect, it } from "vitest";
import { readLetters, shownLetters } from "../../machines/digest/letters.ts";
import { CREW_CODE_LENGTH, makeCode } from "../../server/access/codes.ts";
import { hashedPassphrase, sameBytes } from "../../server/access/passphrase.ts";
import { deviceSigned, signed } from "../../server/access/signed-device.ts";

describe("a code", () => {
  it("is read however it was typed", () => {
    for (const typed of ["K7M-4QX", "k7m4qx", " k7m 4qx ", "K7M–4QX", "Ｋ７Ｍ４ＱＸ"]) expect(readLetters(typed)).toBe("K7M4QX");
    expect(shownLetters("K7M4QX")).toBe("K7M-4QX");
  });
  it("has no letter more often than another", () => {
    const counts = new Map<string, number>();
    // Every byte once: of those that count each letter comes as often.
    let next = 0;
    const random = (count: number) => Uint8Array.from({ length: count }, () => next++ % 256);
    for (const letter of makeCode(248, random)) counts.set(letter, (counts.get(letter) ?? 0) + 1);
    expect([counts.size, new Set(counts.values()).size]).toEqual([31, 1]);
    expect([...counts.keys()].filter((letter) => "0O1IL".includes(letter))).toEqual([]);
  });
  it("is as long as it is said to be", () => {
    expect(makeCode(CREW_CODE_LENGTH, (count) => new Uint8Array(count).fill(200))).toHaveLength(CREW_CODE_LENGTH);
  });
});

describe("what is kept of a secret", () => {
  it("of the same passphrase is another each time, as its salt is", async () => {
    const [one, two] = await Promise.all([1, 2].map((n) => hashedPassphrase("harvest supper", new Uint8Array(16).fill(n))));
    expect(one).not.toBe(two);
  });
  it("bytes are the same, or not", () => {
    expect([sameBytes(Uint8Array.of(1, 2), Uint8Array.of(1, 2)), sameBytes(Uint8Array.of(1, 2), Uint8Array.of(1, 3))]).toEqual([
      true,
      false,
    ]);
    expect(sameBytes(Uint8Array.of(1), Uint8Array.of(1, 2))).toBe(false);
  });
});

describe("the name of a device", () => {
  const key = new Uint8Array(32).fill(7);
  it("is believed with the signature of this server alone", () => {
    const cookie = signed("phone-of-jory", key);
    expect(deviceSigned(cookie, key)).toBe("phone-of-jory");
    expect(deviceSigned(cookie, new Uint8Array(32).fill(8))).toBeNull();
    expect(deviceSigned(cookie.replace("jory", "ines"), key)).toBeNull();
    for (const bent of ["", ".", "phone-of-jory", cookie.slice(0, -1), `${cookie}0`, "__proto__.".concat(cookie.split(".")[1]!)])
      expect(deviceSigned(bent, key)).toBeNull();
  });
});
