import { rmSync } from "node:fs";
import { join } from "node:path";
import Database from "libsql";
import { expect, it } from "vitest";
import { openJournal } from "../../server/journal/open-file.ts";
import { testApp } from "../support/app.ts";
import { openedJob } from "../support/job.ts";
import { scratchFolder } from "../support/scratch.ts";

it("folds that were made another way are rebuilt from the entries when their file is opened", async () => {
  const folder = scratchFolder("stale-folds");
  const file = join(folder, "data.db");
  const journal = openJournal(file);
  const job = await openedJob(undefined, testApp(journal));
  await job.to((s) => s.phase === "sectionsJoined");
  const folds = await journal.folds();
  await journal.close();

  // As another version of the program wrote them: without the work.
  const { worked, ...old } = folds[0]!.fold!;
  const db = new Database(file);
  db.exec(`UPDATE folds SET version = 0, body = x'${Buffer.from(JSON.stringify(old)).toString("hex")}'`);
  db.close();

  const again = openJournal(file);
  expect(await again.folds()).toEqual(folds);
  expect((await again.folds())[0]!.fold!.worked).toEqual(worked);
  expect(worked.done).toEqual(["utilitiesMarked", "anchorsSet"]);
  await again.close();
  rmSync(folder, { recursive: true });
});
