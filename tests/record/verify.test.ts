import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { hashOf } from "../../machines/digest/digest.ts";
import { type Entry, seal, unseal } from "../../machines/record/entry.ts";
import { verifyChain } from "../../machines/record/verify-chain.ts";
import { asStored, chainOf, lineAfter } from "../support/entries.ts";

const record = chainOf("job-1", 8);
const lines = asStored(record);
const text = (bytes: Uint8Array) => new TextDecoder().decode(bytes);
const madeOf = (no: number, json: string) => {
  const bytes = new TextEncoder().encode(json);
  return { no, hash: hashOf(bytes), bytes };
};
const position = fc.integer({ min: 0, max: lines.length - 1 });

describe("sealing", () => {
  it("and unsealing gives the same entry", () => {
    for (const { entry, bytes, hash } of record) expect(unseal(bytes, hash)).toEqual({ entry, bytes, hash });
  });
  it("gives the same bytes whatever the order of the fields", () => {
    const { entry } = record[1]!;
    expect(text(seal(Object.fromEntries(Object.entries(entry).reverse()) as Entry).bytes)).toBe(text(record[1]!.bytes));
  });
  it("is not undone by other bytes", () =>
    expect(() => unseal(record[1]!.bytes, record[2]!.hash)).toThrow(`does not fit its hash ${record[2]!.hash.slice(0, 12)}`));
});

describe("a chain", () => {
  it("that nobody touched holds, and gives its entries", () => expect(verifyChain(lines)).toEqual({ holds: true, entries: record }));
  it("of nothing holds", () => expect(verifyChain([])).toEqual({ holds: true, entries: [] }));

  it("with any bit of any byte of any entry turned names that entry, and gives those before it", () =>
    fc.assert(
      fc.property(position, fc.nat(), fc.integer({ min: 0, max: 7 }), (at, byte, bit) => {
        const bytes = Uint8Array.from(lines[at]!.bytes);
        bytes[byte % bytes.length]! ^= 1 << bit;
        expect(verifyChain(lines.with(at, { ...lines[at]!, bytes }))).toEqual({
          holds: false,
          entries: record.slice(0, at),
          firstMismatch: at + 1,
          why: "hash",
        });
      }),
    ));
  it("with any two entries swapped names the first", () =>
    fc.assert(
      fc.property(position, position, (a, b) => {
        fc.pre(a < b);
        const swapped = lines.with(a, lines[b]!).with(b, lines[a]!);
        expect(verifyChain(swapped)).toMatchObject({ holds: false, firstMismatch: a + 1, why: "gap" });
      }),
    ));
  it.each([0, 1, 4, 6])("without the entry at position %d names the place where it was", (at) =>
    expect(verifyChain(lines.toSpliced(at, 1))).toMatchObject({ holds: false, firstMismatch: at + 1, why: "gap" }),
  );
  it("with an entry twice names the second", () =>
    expect(verifyChain(lines.toSpliced(3, 0, lines[2]!))).toMatchObject({ holds: false, firstMismatch: 4, why: "gap" }));
  it("with an entry cut short names it", () =>
    expect(verifyChain(lines.with(5, { ...lines[5]!, bytes: lines[5]!.bytes.slice(0, -9) }))).toMatchObject({
      firstMismatch: 6,
      why: "hash",
    }));
  it("cut off at the end holds, with another last hash: that is what a last hash kept elsewhere is for", () => {
    const cut = verifyChain(lines.slice(0, 5));
    expect(cut.holds).toBe(true);
    expect(cut.entries.at(-1)!.hash).not.toBe(record.at(-1)!.hash);
  });

  it("with an entry rewritten, hash and all, is betrayed by the one after it", () => {
    const forged = seal({ ...record[3]!.entry, at: 0 } as Entry);
    expect(verifyChain(lines.with(3, { no: 4, hash: forged.hash, bytes: forged.bytes }))).toMatchObject({ firstMismatch: 5, why: "prev" });
  });
  it("with an entry of another job in it names that", () => {
    const strange = lineAfter(record[4]!, "new", { job: "job-2" });
    expect(verifyChain([...lines.slice(0, 5), ...asStored([strange])])).toMatchObject({ firstMismatch: 6, why: "job" });
  });
  it("whose store gives an entry another number than its own names that", () =>
    expect(verifyChain(lines.with(2, { ...lines[2]!, no: 7 }))).toMatchObject({ firstMismatch: 3, why: "gap" }));
  it.each(["", "no JSON", "null", "7", '"text"'])("with hashed bytes that are no entry (%j) names them", (json) =>
    expect(verifyChain(lines.with(2, madeOf(3, json)))).toMatchObject({ holds: false, firstMismatch: 3, why: "notJson" }),
  );
  it.each(["{}", "[]"])("with hashed JSON that has no number (%s) names it", (json) =>
    expect(verifyChain(lines.with(2, madeOf(3, json)))).toMatchObject({ holds: false, firstMismatch: 3, why: "gap" }),
  );
});
