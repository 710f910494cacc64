import type { TentPlan } from "../machines/tent/types.ts";
import { TentDrawing } from "./drawing/tent.tsx";
import { Page } from "./page.tsx";
import { feetInches, kitName, pieceName } from "./text/en/names.ts";
import { label } from "./text/en/page.ts";

const Table = ({ title, rows }: { title: string; rows: readonly (readonly (string | number)[])[] }) => (
  <section>
    <h2>{title}</h2>
    <table>
      {rows.map((row) => (
        <tr>
          {row.map((cell) => (
            <td>{cell}</td>
          ))}
        </tr>
      ))}
    </table>
  </section>
);

/** What stands on the ground, drawn and as tables with the same facts. */
export const PlanPage = ({ job, plan }: { job: { id: string; title: string; rehearsal: boolean }; plan: TentPlan }) => (
  <Page title={label.plan}>
    <main class="plan">
      {job.rehearsal && <p class="rehearsal">{label.notReal}</p>}
      <h1>{job.title}</h1>
      <a class="button" href={`/jobs/${job.id}`}>
        {label.guide}
      </a>
      <section>
        <h2>{label.drawing}</h2>
        <TentDrawing plan={plan} />
      </section>
      <Table
        title={label.pieces}
        rows={plan.pieces.map((p) => [
          p.order,
          pieceName(p.id),
          Object.entries(p.edges)
            .map(([side, edge]) => `${side}: ${edge}`)
            .join(", "),
        ])}
      />
      <Table title={label.kit} rows={plan.kit.map((k) => [k.count, kitName(k.item)])} />
      <Table
        title={label.stations}
        rows={plan.stations.map((s) => [s.id, s.kind, feetInches(s.xFt), feetInches(s.yFt), s.plates, s.stakes])}
      />
      <Table title={label.poles} rows={plan.poles.map((p) => [p.id, p.kind, feetInches(p.xFt), feetInches(p.yFt)])} />
    </main>
  </Page>
);
