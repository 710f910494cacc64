import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { Changed, NameTaken, type TentBody, WriteRepeated } from "../../server/journal/catalog.ts";
import type { Journal } from "../../server/journal/journal.ts";

const body = (name: string, widthFt = 60): TentBody => ({ name, spec: { widthFt, notes: ["ü", "雨"] }, kit: null, at: 1000 + widthFt });
const by = (n: number) => ({ key: `key-${n}`, request: `request-${n}` });

/** What every list of tents promises, wherever it is kept. `create` gives an empty one, with the journal that it lies beside. */
export function catalogContract(where: string, create: () => Journal) {
  describe(`a list of tents ${where}`, () => {
    let journal: Journal;
    beforeEach(async () => {
      journal = create();
      await journal.catalog.add("t-1", body("Old blue"), by(1));
      await journal.catalog.add("t-2", { ...body("Great white", 100), kit: { sidePole: { spare: 0.05 } } }, by(2));
    });
    afterEach(() => journal.close());
    const list = () => journal.catalog;
    const names = async () => (await list().tents()).map((t) => t.name);

    it("gives tents back as they were saved, by name", async () => {
      expect(await list().tents()).toEqual([
        { ...body("Great white", 100), kit: { sidePole: { spare: 0.05 } }, id: "t-2", version: 1 },
        { ...body("Old blue"), id: "t-1", version: 1 },
      ]);
      expect(await list().tent("t-1")).toEqual({ ...body("Old blue"), id: "t-1", version: 1 });
      expect(await list().tent("t-9")).toBeNull();
    });
    it("changes a tent, and counts its versions", async () => {
      await list().change("t-1", 1, { ...body("Old blue, mended", 61), kit: { midPiece: { unitLb: 200 } } }, by(3));
      await list().change("t-1", 2, body("Old blue", 62), by(4));
      expect(await list().tent("t-1")).toEqual({ ...body("Old blue", 62), id: "t-1", version: 3 });
    });
    it("takes a tent out", async () => {
      await list().remove("t-1", 1, by(3));
      expect(await names()).toEqual(["Great white"]);
      expect(await list().tent("t-1")).toBeNull();
    });
    it.each([
      ["an older version", "t-1", 0],
      ["a version to come", "t-1", 2],
      ["a tent that is not there", "t-9", 1],
    ])("neither changes nor takes out %s", async (_what, id, version) => {
      await expect(list().change(id, version, body("Another"), by(3))).rejects.toThrow(Changed);
      await expect(list().remove(id, version, by(3))).rejects.toThrow(Changed);
      expect(await names()).toEqual(["Great white", "Old blue"]);
      expect(await list().written("key-3")).toBeNull();
    });
    it.each(["Old blue", "OLD BLUE", "  old   blue ", "ołd blue".replace("ł", "l")])("gives no second tent the name %j", async (name) => {
      await expect(list().add("t-3", body(name), by(3))).rejects.toThrow(NameTaken);
      await expect(list().change("t-2", 1, body(name), by(3))).rejects.toThrow(NameTaken);
      expect(await names()).toEqual(["Great white", "Old blue"]);
    });
    it("takes letters for the same however they are composed, and in any case", async () => {
      await list().add("t-3", body("Größe É"), by(3));
      await expect(list().add("t-4", body("größe e\u0301"), by(4))).rejects.toThrow(NameTaken);
    });
    it("lets a tent keep its name, in another case too, and gives a name free once its tent is out", async () => {
      await list().change("t-1", 1, body("OLD Blue"), by(3));
      await list().remove("t-1", 2, by(4));
      await list().add("t-3", body("old blue"), by(5));
      expect(await names()).toEqual(["Great white", "old blue"]);
    });
    it("writes once with a key, and tells what it wrote, also when the tent is out again", async () => {
      for (const write of [
        () => list().add("t-3", body("New"), by(1)),
        () => list().change("t-1", 1, body("New"), by(1)),
        () => list().remove("t-1", 1, by(1)),
      ])
        await expect(write()).rejects.toThrow(WriteRepeated);
      await list().remove("t-1", 1, by(3));
      expect(await list().written("key-1")).toEqual({ request: "request-1", tent: "t-1" });
      expect(await list().written("key-3")).toEqual({ request: "request-3", tent: "t-1" });
      expect(await names()).toEqual(["Great white"]);
    });
    it("is no job: the journal beside it stays empty", async () => {
      expect([await journal.jobs(), await journal.folds()]).toEqual([[], []]);
    });
  });
}
