import type { Context } from "hono";
import { FLAGS, type Flag } from "../../machines/record/findings.ts";
import type { AtAGlance, JobFindings } from "../../views/pages/at-a-glance/build-state.ts";
import { AtAGlancePage, JobRow } from "../../views/pages/at-a-glance/view.tsx";
import { onlyMarked } from "../../views/pages/record/build-state.ts";
import type { CallRun, RecordState } from "../../views/pages/record/state.ts";
import { CallBlock, PhaseSection, RecordPage, type Show } from "../../views/pages/record/view.tsx";
import type { HurtState } from "../../views/parts/hurt-state.ts";
import { lots, rendered } from "./lots.ts";
import { page } from "./page.ts";
import { around, insides } from "./stream.ts";

/** The marks that a query names, each once, in one parameter or several. With a name that is none, all is shown. */
export function shownBy(queries: readonly string[]): Show {
  const names = [...new Set(queries.flatMap((q) => q.split(",")).filter((name) => name !== ""))];
  const unknown = names.filter((name) => !(FLAGS as readonly string[]).includes(name));
  return { marks: unknown.length > 0 ? [] : FLAGS.filter((mark: Flag) => names.includes(mark)), unknown };
}

/** The page of a record, part by part. */
export async function* recordParts(c: Context, state: RecordState, show: Show, hurt: HurtState | null): AsyncGenerator<string> {
  const words = c.get("words");
  const phases = show.marks.length === 0 ? state.phases : onlyMarked(state.phases, show.marks);
  const shown = phases.reduce((sum, { calls }) => sum + calls.reduce((n, { lines }) => n + lines.length, 0), 0);
  const [head, foot] = await around((inside) =>
    page(
      c,
      <RecordPage state={state} show={show} shown={shown} hurt={hurt} words={words}>
        {inside}
      </RecordPage>,
    ),
  );
  yield head;
  for (const phase of phases) {
    const [open, close] = await around(async (inside) => String(await (<PhaseSection phase={phase}>{inside}</PhaseSection>)));
    yield open;
    for (const calls of lots(phase.calls, (call: CallRun) => call.lines.length + 1))
      yield rendered(calls, (call) => <CallBlock call={call} job={state.job} words={words} />);
    yield close;
  }
  yield foot;
}

/** The page of all jobs, part by part. */
export async function* atAGlanceParts(c: Context, state: AtAGlance): AsyncGenerator<string> {
  const words = c.get("words");
  const whole = await page(c, <AtAGlancePage state={state} jobs={insides.first} rehearsals={insides.second} words={words} />);
  const rows: Readonly<Record<string, readonly JobFindings[]>> = { [insides.first]: state.jobs, [insides.second]: state.rehearsals };
  for (const piece of whole.split(insides.either)) {
    const jobs = rows[piece];
    if (jobs === undefined) yield piece;
    else
      for (const lot of lots(jobs, () => 1))
        yield rendered(lot, (job: JobFindings) => <JobRow job={job} rehearsal={piece === insides.second} words={words} />);
  }
}
