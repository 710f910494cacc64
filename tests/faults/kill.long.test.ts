import { readFileSync, rmSync, truncateSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { afterEach, beforeEach, expect, it } from "vitest";
import { hashOf } from "../../machines/digest/digest.ts";
import { verifyChain } from "../../machines/record/verify-chain.ts";
import { openJournal } from "../../server/journal/open-file.ts";
import { openingLine } from "../support/entries.ts";
import { named } from "../support/people.ts";
import { scratchFolder } from "../support/scratch.ts";
import { npmStart, spawnServer } from "../support/spawn-server.ts";

let folder: string;
beforeEach(() => {
  folder = scratchFolder("test");
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

it("killed in the middle of a run of commands, again and again, it loses no entry that was acknowledged", async () => {
  const file = join(folder, "data.db");
  const acknowledged = new Map<string, number>();
  let job = "";
  for (let round = 0; round < 3; round++) {
    const { url, child, stopped } = await spawnServer(file);
    job ||= ((await (await fetch(`${url}jobs.json`)).json()) as { jobs: { id: string }[] }).jobs[0]!.id;
    let sent = 0;
    while (child.exitCode === null && child.signalCode === null) {
      const key = `kill-${round}-${sent++}`;
      if (sent === 20 + round * 7) child.kill("SIGKILL");
      const r = await fetch(`${url}jobs/${job}/say`, {
        method: "POST",
        headers: { "content-type": "application/json" },
        body: JSON.stringify({ as: "Ines", key, seen: 0, type: "note", text: key }),
      }).catch(() => null);
      const told = r && ((await r.json().catch(() => null)) as { entry: number } | null);
      if (told) acknowledged.set(key, told.entry);
      else break;
    }
    await stopped;
  }
  expect(acknowledged.size).toBeGreaterThan(40);
  const journal = openJournal(file);
  const chain = verifyChain(await journal.read(job));
  expect(chain.holds).toBe(true);
  for (const [key, no] of acknowledged) expect((await journal.keyed(job, key))?.entry.no).toBe(no);
  await journal.close();
});

it.each([
  ["cut short in the middle", (file: string) => truncateSync(file, 9000), /damaged/],
  ["another kind of file", (file: string) => writeFileSync(file, "name,size\ntent,80x100\n".repeat(50)), /not a Ridgecall data file/],
  ["empty", (file: string) => truncateSync(file, 0), /is empty/],
  ["with bytes overwritten", (file: string) => writeFileSync(file, overwritten(readFileSync(file))), /damaged/],
])("a data file %s: one sentence at the start, and the file as it was", async (_what, damage, sentence) => {
  const file = join(folder, "data.db");
  const journal = openJournal(file);
  await journal.open(openingLine("job-1"), named({ p1: "Ines" }));
  await journal.close();
  damage(file);
  const before = hashOf(readFileSync(file));
  await expect(spawnServer(file)).rejects.toThrow(sentence);
  expect(hashOf(readFileSync(file))).toBe(before);
});

it("as the README starts it, it says where it is, shows its jobs, and stops when it is told to", async () => {
  const { url, child, stopped } = await npmStart(join(folder, "data.db"));
  expect(await (await fetch(url)).text()).toContain("Demo: harvest supper");
  child.kill("SIGTERM");
  await stopped;
  await expect(fetch(url)).rejects.toThrow();
});

it("a second server on the same file is turned away with one sentence", async () => {
  const file = join(folder, "data.db");
  const { child, stopped } = await spawnServer(file);
  await expect(spawnServer(file)).rejects.toThrow(/in use by another Ridgecall/);
  child.kill("SIGTERM");
  await stopped;
});

function overwritten(bytes: Buffer): Buffer {
  bytes.fill(0xa5, 4096, 4096 + 2048);
  return bytes;
}
