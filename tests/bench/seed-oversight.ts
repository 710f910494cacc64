import type Sqlite from "better-sqlite3";
import { foldName } from "../../machines/install/person-name.ts";
import { PHASES } from "../../machines/install/step.ts";
import type { Opening } from "../../machines/record/entry.ts";
import { FOLD_VERSION, openFold } from "../../machines/record/findings.ts";
import { FINDING_KINDS, type Finding } from "../../machines/record/oversight/finding.ts";
import { twoFigures } from "../../machines/record/oversight/measure.ts";
import { openingLine } from "../support/entries.ts";

/** Findings of a job of 200 entries: about as many as a crew's job has that goes as it should, and a few that do not. */
const FINDINGS = 24;
const HOUR = 3_600_000;
const FIRST = Date.UTC(2025, 0, 1);
const SIZES = ["20x20", "20x40", "30x30", "40x40", "40x80", "60x60", "60x120", "80x100", "80x160", "100x200"];
/** Rare kinds last: every other finding is of one of the first few. */
const kindOf = (n: number) => FINDING_KINDS[n % 7 < 5 ? (n * 3) % 8 : n % FINDING_KINDS.length]!;

/** Puts what would be kept of so many jobs into a data file, row by row: entry by entry it would take hours. */
export function seedOversight(db: Sqlite.Database, jobs: number): void {
  const fold = db.prepare("INSERT INTO folds (job, no, hash, version, body) VALUES (?, 200, ?, ?, ?)");
  const name = db.prepare("INSERT INTO names (job, person, name, salt, folded) VALUES (?, ?, ?, '', ?)");
  const finding = db.prepare(
    "INSERT INTO findings (job, kind, entry, phase, at, day, lead, size, people, state, body) VALUES (?, ?, ?, ?, ?, ?, 'p1', ?, ?, ?, ?)",
  );
  const measure = db.prepare("INSERT INTO measures (job, what, key, name, n, day, lead, size) VALUES (?, ?, ?, ?, ?, ?, 'p1', ?)");
  const body = JSON.stringify(openFold(openingLine("job").entry as Opening));
  db.exec("BEGIN");
  for (let n = 0; n < jobs; n++) {
    const job = `job-${n}`;
    const size = SIZES[n % SIZES.length]!;
    const opened = FIRST + n * 1.4 * HOUR;
    const dayOf = (at: number) => new Date(at).toISOString().slice(0, 10);
    fold.run(job, `hash of ${job}`, FOLD_VERSION, Buffer.from(body));
    for (const [i, called] of [`Ines ${n % 4}`, `Maren ${n % 30}`, `Ömer ${n % 100}`, `Jo ${n}`].entries())
      name.run(job, `p${i + 1}`, called, foldName(called));
    measure.run(job, "job", "", size, 0, dayOf(opened), size);
    for (const [i, phase] of PHASES.entries())
      measure.run(job, "time", phase, phase, twoFigures(600 + ((n * 7919 + i * 104729) % 9000)), dayOf(opened), size);
    for (let i = 0; i < 5; i++) measure.run(job, "refusals", `${i * 9} gate`, PHASES[i]!, 1 + ((n + i) % 6), dayOf(opened), size);
    for (let i = 0; i < FINDINGS; i++) {
      const at = opened + i * 0.2 * HOUR;
      const phase = PHASES[i % PHASES.length]!;
      const facts = {
        because: "no such thing here",
        count: 4,
        seconds: 2,
        minSeconds: 5,
        fields: [],
        value: { kind: "count", n: 3 },
        check: { kind: "count", from: 1, to: 2 },
        followed: null,
        ms: 5,
        is: "back",
      };
      const found = {
        kind: kindOf(n + i),
        entry: i * 8 + 1,
        entries: [i * 8 + 1, i * 8 + 2],
        phase,
        by: ["p1", `p${2 + (i % 3)}`],
        at,
        day: dayOf(at),
        lead: "p1",
        size,
        asks: { wordsKey: "squared", params: {} },
        facts,
      } as unknown as Finding;
      const state = (n + i) % 50 === 0 ? "accepted" : (n + i) % 77 === 0 ? "followedUp" : "open";
      finding.run(
        job,
        found.kind,
        found.entry,
        phase,
        at,
        found.day,
        size,
        ` ${found.by.join(" ")} `,
        state,
        Buffer.from(JSON.stringify(found)),
      );
    }
  }
  db.exec("COMMIT");
}
