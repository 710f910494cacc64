import type { Context } from "hono";
import type { Paper } from "../../views/pages/layout/state.ts";
import { FindingLine, Findings, Gates, GateTable, Photos, ReadingLine, Readings, Sums } from "../../views/pages/report/parts.tsx";
import type { GateGroup, ReportState } from "../../views/pages/report/state.ts";
import { Drawing, ReportPage } from "../../views/pages/report/view.tsx";
import type { HurtState } from "../../views/parts/hurt-state.ts";
import type { Words } from "../../views/text/words.ts";
import { lots, type Rendered, rendered } from "./lots.ts";
import { page } from "./page.ts";
import { around } from "./stream.ts";

type Shown = { readonly state: ReportState; readonly paper: Paper; readonly hurt: HurtState | null; readonly words: Words };

/** The page of a report, part by part. */
export async function* reportParts(c: Context, { state, paper, hurt, words }: Shown): AsyncGenerator<string> {
  const [head, foot] = await around((inside) =>
    page(
      c,
      <ReportPage state={state} paper={paper} hurt={hurt} words={words}>
        {inside}
      </ReportPage>,
    ),
  );
  const text = async (node: Rendered) => String(await node.toString());
  yield head;
  yield text(<Drawing state={state} words={words} />);
  yield* within(
    await around((inside) =>
      text(
        <Gates ahead={state.ahead} words={words}>
          {inside}
        </Gates>,
      ),
    ),
    lots(state.gates, ({ gates }: GateGroup) => gates.length),
    (group) => <GateTable group={group} words={words} />,
  );
  if (state.readings.length === 0) yield text(<Readings words={words} />);
  else
    yield* within(
      await around((inside) => text(<Readings words={words}>{inside}</Readings>)),
      lots(state.readings, () => 1),
      (reading) => <ReadingLine reading={reading} words={words} />,
    );
  yield text(<Sums state={state} words={words} />);
  if (state.findings.length > 0)
    yield* within(
      await around((inside) => text(<Findings>{inside}</Findings>)),
      lots(state.findings, () => 1),
      (finding) => <FindingLine finding={finding} />,
    );
  yield text(<Photos state={state} words={words} />);
  yield foot;
}

/** What comes before and after, and between them items, lot by lot. */
async function* within<T>(
  [open, close]: readonly [string, string],
  all: Iterable<readonly T[]>,
  view: (item: T) => Rendered,
): AsyncGenerator<string> {
  yield open;
  for (const lot of all) yield rendered(lot, view);
  yield close;
}
