import Database from "libsql";
import { readBrief } from "../../server/input/brief.ts";
import { openJournal } from "../../server/journal/open-file.ts";
import { brief, testApp } from "./app.ts";
import { openedJob } from "./job.ts";

/** A data file with what a manager meets: a job from end to end, one changed on its way, a rehearsal, one that cannot be read. */
export async function fileOfRecords(file: string): Promise<{ whole: string; changed: string }> {
  const journal = openJournal(file);
  const world = testApp(journal);
  const spoiled = await openedJob({ ...brief(), title: "Mill yard" }, world);
  await spoiled.say({ type: "next" });

  const changed = await openedJob({ ...brief(), title: "Lower meadow, the long top" }, world);
  await changed.to((s) => s.step === "rings");
  await changed.say({ type: "answer", gate: "rings", value: { kind: "figures", unit: "count", n: { AB: 13 } } });
  const longer = readBrief({ ...brief(), title: "Lower meadow, the long top", tent: { ...brief().tent, lengthFt: 120, midsFt: [20, 20] } });
  const { no } = await changed.say({ type: "amend", because: "cloth is one mid longer", to: longer.frozen });
  await changed.say({ type: "agree", target: no }, "Maren");
  const practice = await openedJob({ ...brief(), title: "Practice behind the barn", rehearsal: true }, world);
  await practice.say({ type: "next" }, "Ines");

  const whole = await openedJob({ ...brief(), title: "Harvest supper, upper meadow" }, world);
  const talk = { source: "talk", device: "phone-of-Ines" } as const;
  const heard = await whole.say(
    { type: "readBack", intent: { type: "answer", gate: "sheet.atHand", value: { kind: "unknown" } } },
    "Ines",
    talk,
  );
  await whole.say({ type: "correct", target: heard.no }, "Ines", talk);
  const soft = await whole.to((s) => s.gate?.hard === false);
  await whole.say({ type: "waive", gate: soft.gate!.id, because: "no such thing here" });
  await whole.say({ type: "next" });
  await whole.say({ type: "back" });
  await whole.to((s) => s.phase === "standing");
  world.clock.pass(7200);
  await whole.say({ type: "makeSafe", because: "a strap torn at AB4" }, "Odd");
  await whole.to((s) => s.closed);
  await journal.close();

  const db = new Database(file);
  db.exec(`DROP TRIGGER entries_stay; UPDATE entries SET bytes = x'00' WHERE job = '${spoiled.job}' AND no = 1`);
  db.close();
  return { whole: whole.job, changed: changed.job };
}
