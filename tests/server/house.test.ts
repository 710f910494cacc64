import { rmSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeEach, describe, expect, it } from "vitest";
import { readHouse } from "../../machines/record/house.ts";
import type { Failure } from "../../machines/record/storage.ts";
import { createHouse } from "../../server/house.ts";
import { type Journal, NotWritten } from "../../server/journal/journal.ts";
import { memoryJournal } from "../../server/journal/memory.ts";
import { openJournal } from "../../server/journal/open-file.ts";
import { sqliteJournal } from "../../server/journal/sqlite.ts";
import { en } from "../../views/text/en/en.ts";
import { MORNING } from "../support/app.ts";
import { chainOf, lineAfter, openingLine } from "../support/entries.ts";
import { scratchFolder } from "../support/scratch.ts";
import { houseContract } from "./house.contract.ts";

const folder = scratchFolder("house-store");
afterAll(() => rmSync(folder, { recursive: true, force: true }));
let files = 0;
houseContract("in a file", () => openJournal(join(folder, `data-${++files}.db`)));
houseContract("in SQLite's memory", () => sqliteJournal(":memory:"));
houseContract("in memory", memoryJournal);

const HOUR = 3_600_000;
const DAY = 24 * HOUR;

describe("the house stream is kept", () => {
  let journal: Journal;
  let wall: number;
  let told: Failure[];
  const clock = () => ({ wall, elapsedMs: 0 });
  /** The server started again over the same jobs. */
  const started = (over: Pick<Journal, "house"> = journal) => createHouse({ journal: over, clock }, (failure) => told.push(failure));
  const entries = async () => readHouse(await journal.house.lines()).entries.map(({ entry }) => entry);
  const [first, second, third] = chainOf("job-1", 3);

  beforeEach(async () => {
    journal = memoryJournal();
    [wall, told] = [MORNING, []];
    await journal.open(first!, {});
  });

  it("with one entry a day, however often the server starts and looks", async () => {
    for (let n = 0; n < 3; n++) {
      const house = started();
      await house.daily();
      wall += HOUR;
      await house.daily();
      await house.beforeStop();
    }
    expect(await entries()).toMatchObject([{ no: 1, day: "2026-06-02", jobs: 1, tips: [{ job: "job-1", no: 1 }] }]);
  });
  it("with another one on each day that comes, also where nothing was said since", async () => {
    const house = started();
    for (let n = 0; n < 3; n++, wall += DAY) await house.daily();
    expect((await entries()).map(({ day, tips }) => [day, tips.length])).toEqual([
      ["2026-06-02", 1],
      ["2026-06-03", 0],
      ["2026-06-04", 0],
    ]);
  });
  it("with one more before the server stops, where something was recorded since", async () => {
    const house = started();
    await house.daily();
    await journal.append(second!);
    await house.beforeStop();
    await house.beforeStop();
    expect((await entries()).map(({ day, tips }) => [day, tips[0]?.no])).toEqual([
      ["2026-06-02", 1],
      ["2026-06-02", 2],
    ]);
  });
  it("not again for a day that it has, when somebody sets the clock back and ahead", async () => {
    const house = started();
    for (const days of [0, 300, 0, 300, 1]) {
      wall = MORNING + days * DAY;
      await house.daily();
    }
    expect((await entries()).map(({ day }) => day)).toEqual(["2026-06-02", "2027-03-29", "2026-06-03"]);
  });
  it("with what is taken away on purpose noted before it goes, which is the entry of its day", async () => {
    await journal.open(openingLine("job-2"), {});
    const house = started();
    await house.daily();
    wall += DAY;
    expect(await house.takeAway(["job-2"])).toBe(true);
    await journal.removeJob("job-2");
    await house.daily();
    expect((await entries()).map(({ day, jobs, gone, removed }) => ({ day, jobs, gone, removed }))).toEqual([
      { day: "2026-06-02", jobs: 2, gone: [], removed: [] },
      { day: "2026-06-03", jobs: 1, gone: [], removed: ["job-2"] },
    ]);
  });
  it("once, when it is looked at twice in one moment", async () => {
    const house = started();
    await Promise.all([house.daily(), house.daily(), house.beforeStop()]);
    expect(await entries()).toHaveLength(1);
  });
  it("by another one that writes to the same jobs meanwhile: the next look goes on after that", async () => {
    const [one, other] = [started(), started()];
    await one.daily();
    await other.daily();
    wall += DAY;
    await other.daily();
    await one.daily();
    await one.daily();
    expect((await entries()).map(({ no, day }) => [no, day])).toEqual([
      [1, "2026-06-02"],
      [2, "2026-06-03"],
    ]);
  });

  describe("on a disk that takes nothing", () => {
    const FULL = { why: "full", place: "/data/ridgecall.db" } as const;
    let isFull: boolean;
    const over = (): Pick<Journal, "house"> => ({
      house: {
        ...journal.house,
        append: async (entry) => {
          if (isFull) throw new NotWritten(FULL);
          return journal.house.append(entry);
        },
      },
    });

    it("it is told once, tried at each look, and made when there is room", async () => {
      isFull = true;
      const house = started(over());
      for (let n = 0; n < 3; n++) await house.daily();
      expect([told, await entries()]).toEqual([[FULL], []]);
      expect(en.start.noHouseEntry(FULL)).toBe(
        "The disk with the data file /data/ridgecall.db is full, so nothing more is recorded; make room on it. The house stream has no entry of today yet; it is tried again each minute.",
      );
      isFull = false;
      await house.daily();
      expect(await entries()).toHaveLength(1);
    });
    it("nothing is taken away on purpose, as it could not be told from what somebody else took", async () => {
      isFull = true;
      expect(await started(over()).takeAway(["job-1"])).toBe(false);
    });
    it("what is said to a job meanwhile waits for nothing and is recorded", async () => {
      isFull = true;
      const house = started(over());
      const looked = house.daily();
      await journal.append(second!);
      await looked;
      await journal.append(lineAfter(second!));
      expect((await journal.read("job-1")).at(-1)?.hash).toBe(third!.hash);
    });
  });
});
