import { expect, it } from "vitest";
import type { CommandEntry } from "../../machines/record/entry.ts";
import { sqliteJournal } from "../../server/journal/sqlite.ts";
import { MORNING, testApp } from "../support/app.ts";
import { brief } from "../support/briefs.ts";
import { openedJob } from "../support/job.ts";

/** A record keeps its objects in the order of the alphabet; what is asked has an order of its own. */
it("numbers without names are taken in the order asked, the same before and after the server starts again", async () => {
  const journal = sqliteJournal(":memory:");
  const job = await openedJob(brief(), testApp(journal));
  const { gate } = await job.to((s) => s.step === "stakes.AB");
  expect(gate!.ask).toBe("How many stakes, how many plates?");
  const heard = async (world: ReturnType<typeof testApp>, key: string) => {
    const { job: live } = await world.liveJobs.load(job.job);
    const body = { as: "Ines", key, seen: live.snapshot.context.revision, alternatives: ["twenty-two and eleven"], talk: true };
    await world.post(`/jobs/${job.job}/say`, body);
    const { command } = (await world.liveJobs.load(job.job)).entries.at(-1)!.entry as CommandEntry;
    return command.type === "readBack" ? command.intent : command;
  };
  const said = { type: "answer", value: { kind: "figures", n: { stakes: 22, plates: 11 } } };
  expect(await heard({ ...job, post: job.post } as never, "said-before")).toMatchObject(said);
  const restarted = testApp(journal, MORNING + 86_400_000);
  expect(await heard(restarted, "said-after1")).toMatchObject(said);
  const { gate: shown } = (await (await restarted.app.request(`/jobs/${job.job}.json`)).json()) as { gate: typeof gate };
  expect(shown!.tile).toMatchObject({ input: "figures", rows: [{ name: "stakes" }, { name: "plates" }] });
});
