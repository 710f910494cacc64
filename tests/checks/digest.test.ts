import { createHash } from "node:crypto";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { digest, hashOf } from "../../machines/digest/digest.ts";

const utf8 = (text: string) => new TextEncoder().encode(text);
const canonical = (json: string) => digest.bytes(JSON.parse(json));
const hex = (bytes: Uint8Array) => Buffer.from(bytes).toString("hex");

describe("canonical bytes, RFC 8785 (June 2020)", () => {
  it("of the sample object in section 3.2.2 match section 3.2.4", () => {
    const sample = String.raw`{
      "numbers": [333333333.33333329, 1E30, 4.50, 2e-3, 0.000000000000000000000000001],
      "string": "\u20ac$\u000F\u000aA'\u0042\u0022\u005c\\\"\/",
      "literals": [null, true, false]
    }`;
    const printed = `
      7b 22 6c 69 74 65 72 61 6c 73 22 3a 5b 6e 75 6c 6c 2c 74 72
      75 65 2c 66 61 6c 73 65 5d 2c 22 6e 75 6d 62 65 72 73 22 3a
      5b 33 33 33 33 33 33 33 33 33 2e 33 33 33 33 33 33 33 2c 31
      65 2b 33 30 2c 34 2e 35 2c 30 2e 30 30 32 2c 31 65 2d 32 37
      5d 2c 22 73 74 72 69 6e 67 22 3a 22 e2 82 ac 24 5c 75 30 30
      30 66 5c 6e 41 27 42 5c 22 5c 5c 5c 5c 5c 22 2f 22 7d`;
    expect(hex(canonical(sample))).toBe(printed.replace(/\s/g, ""));
  });
  it("of the sorting sample in section 3.2.3 are sorted by UTF-16 units, not code points", () => {
    const sample = String.raw`{
      "\u20ac": "Euro Sign", "\r": "Carriage Return", "\ufb33": "Hebrew Letter Dalet With Dagesh", "1": "One",
      "\ud83d\ude00": "Emoji: Grinning Face", "\u0080": "Control", "\u00f6": "Latin Small Letter O With Diaeresis"
    }`;
    const inOrder = [...new TextDecoder().decode(canonical(sample)).matchAll(/:"([^"]+)"/g)].map(([, value]) => value);
    expect(inOrder).toEqual([
      "Carriage Return",
      "One",
      "Control",
      "Latin Small Letter O With Diaeresis",
      "Euro Sign",
      "Emoji: Grinning Face",
      "Hebrew Letter Dalet With Dagesh",
    ]);
  });
  it.each([
    ["0000000000000000", "0"],
    ["8000000000000000", "0"],
    ["0000000000000001", "5e-324"],
    ["7fefffffffffffff", "1.7976931348623157e+308"],
    ["4340000000000000", "9007199254740992"],
    ["4430000000000000", "295147905179352830000"],
    ["44b52d02c7e14af5", "9.999999999999997e+22"],
    ["444b1ae4d6e2ef50", "1e+21"],
    ["3eb0c6f7a0b5ed8d", "0.000001"],
    ["41b3de4355555553", "333333333.3333332"],
    ["becbf647612f3696", "-0.0000033333333333333333"],
    ["43143ff3c1cb0959", "1424953923781206.2"],
  ])("of the double %s are %s (appendix B, from memory)", (bits, text) =>
    expect(new TextDecoder().decode(digest.bytes(Buffer.from(bits, "hex").readDoubleBE()))).toBe(text),
  );
  it.each([Number.NaN, Number.POSITIVE_INFINITY])("do not exist for %s (section 3.2.2.3)", (n) => expect(() => digest.bytes(n)).toThrow());
  it("do not exist for values that JSON cannot hold", () => expect(() => digest.bytes(undefined)).toThrow("undefined has no JSON form"));
  it("are the same after reading back", () =>
    fc.assert(fc.property(fc.jsonValue(), (value) => void expect(hex(canonical(JSON.stringify(value)))).toBe(hex(digest.bytes(value))))));
});

describe("SHA-256, FIPS 180-4 (worked examples: FIPS 180-2 appendix B, from memory)", () => {
  it.each([
    ["three letters", "abc", "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad"],
    [
      "two blocks",
      "abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq",
      "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1",
    ],
    ["a million letters", "a".repeat(1_000_000), "cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0"],
  ])("of %s", (_what, text, hash) => expect(hashOf(utf8(text))).toBe(hash));
  it("matches OpenSSL", () =>
    fc.assert(
      fc.property(
        fc.uint8Array({ maxLength: 300 }),
        (bytes) => void expect(hashOf(bytes)).toBe(createHash("sha256").update(bytes).digest("hex")),
      ),
    ));
  it("of a value is the hash of its canonical bytes", () => expect(digest.of({ b: 1, a: 2 })).toBe(hashOf(utf8('{"a":2,"b":1}'))));
  it("of a value that grows is the same, however deep its parts are kept, asked once or again", () =>
    fc.assert(
      fc.property(fc.dictionary(fc.string({ unit: "binary" }), fc.jsonValue()), fc.nat({ max: 4 }), (value, depth) => {
        const all = [0, 1].map(() => digest.ofGrowing({ value, later: undefined }, depth));
        expect(all).toEqual(Array(2).fill(digest.of({ value })));
      }),
    ));
});
