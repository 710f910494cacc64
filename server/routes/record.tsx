import { type Context, Hono } from "hono";
import { foldAll, MARKS, type Mark } from "../../machines/record/findings.ts";
import { CallBlock, PhaseSection, RecordPage, type Show } from "../../views/record.tsx";
import { onlyMarked, recordOf } from "../../views/record-of.ts";
import type { PhaseRun, RecordState } from "../../views/record-state.ts";
import { markName, record, sourceName } from "../../views/text/en/record.ts";
import type { Desks } from "../command.ts";
import { csv } from "../edge/csv.ts";
import { page } from "./page.ts";
import { around, streamed } from "./stream.ts";

/** Entries that are put on the page at a time; between two lots whoever else has something to say is answered. */
const LOT = 100;

/** The record of one job: to be read, as a table, and as data that can be verified elsewhere. */
export function recordRoutes(desks: Desks) {
  const app = new Hono();
  const idOf = (c: Context) => c.req.param("id")!;

  app.get("/jobs/:id{[\\w-]+}/record", async (c) => {
    const state = recordOf(desks.load(idOf(c)));
    return c.body(streamed(pageOf(state, shownBy(c.req.queries("show") ?? []))), 200, { "content-type": "text/html; charset=utf-8" });
  });
  app.get("/jobs/:id{[\\w-]+}/record.json", (c) => {
    const { entries, names, readOnly } = desks.load(idOf(c));
    const { fold, each } = foldAll(entries);
    return c.json({
      job: idOf(c),
      names,
      problem: readOnly,
      findings: fold.counts,
      entries: entries.map((e, i) => ({ hash: e.hash, marks: each[i], ...e.entry })),
    });
  });
  app.get("/jobs/:id{[\\w-]+}/record.csv", (c) => {
    const rows = rowsOf(recordOf(desks.load(idOf(c))));
    return c.body(csv(rows), 200, {
      "content-type": "text/csv; charset=utf-8; header=present",
      "content-disposition": `attachment; filename="record-${idOf(c)}.csv"`,
    });
  });
  return app;
}

/** The marks that a query names, each once, in one parameter or several. */
function shownBy(queries: readonly string[]): Show {
  const names = [...new Set(queries.flatMap((q) => q.split(",")).filter((name) => name !== ""))];
  const unknown = names.filter((name) => !(MARKS as readonly string[]).includes(name));
  return { marks: unknown.length > 0 ? [] : MARKS.filter((mark: Mark) => names.includes(mark)), unknown };
}

async function* pageOf(state: RecordState, show: Show): AsyncGenerator<string> {
  const phases = show.marks.length === 0 ? state.phases : onlyMarked(state.phases, show.marks);
  const shown = phases.reduce((sum, { calls }) => sum + calls.reduce((n, { lines }) => n + lines.length, 0), 0);
  const [head, foot] = await around((inside) =>
    page(
      <RecordPage state={state} show={show} shown={shown}>
        {inside}
      </RecordPage>,
    ),
  );
  yield head;
  for (const phase of phases) {
    const [open, close] = await around(async (inside) => String(await (<PhaseSection phase={phase}>{inside}</PhaseSection>)));
    yield open;
    for (const calls of lots(phase)) yield (await Promise.all(calls.map((call) => (<CallBlock call={call} />).toString()))).join("");
    yield close;
  }
  yield foot;
}

/** The calls of a phase, so many entries at a time. */
function* lots({ calls }: PhaseRun) {
  let lot: PhaseRun["calls"][number][] = [];
  let lines = 0;
  for (const call of calls) {
    lot.push(call);
    lines += call.lines.length + 1;
    if (lines < LOT) continue;
    yield lot;
    lot = [];
    lines = 0;
  }
  yield lot;
}

const rowsOf = ({ phases, zone }: RecordState): (string | number)[][] => [
  [...record.columns],
  ...phases.flatMap((phase) =>
    phase.calls.flatMap((call) =>
      call.lines.map((line) => [
        line.no,
        line.time.local,
        zone,
        line.time.utc,
        phase.name,
        call.say,
        line.who ?? "",
        line.roleName ?? "",
        line.phone?.label ?? "",
        line.phone?.firstBy ?? "",
        line.source === null ? "" : sourceName(line.source),
        line.heard ?? "",
        line.taken,
        line.reply,
        line.marks.map(markName).join("; "),
        line.hash,
      ]),
    ),
  ),
];
