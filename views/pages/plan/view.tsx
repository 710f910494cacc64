import type { TentPlan } from "../../../machines/tent/types.ts";
import { TentDrawing } from "../../drawing/tent.tsx";
import { Page } from "../../parts/page.tsx";
import { layout } from "../../text/en/layout.ts";
import { kitName, pieceName } from "../../text/en/names.ts";
import { label } from "../../text/en/page.ts";

type Props = { job: { id: string; title: string; rehearsal: boolean }; plan: TentPlan };

/** What stands on the ground at a glance: drawn for a phone, the pieces and the kit. Every place and reading is on the layout sheet. */
export const PlanPage = ({ job, plan }: Props) => (
  <Page title={label.plan} style="/assets/layout.css">
    <main class="plan">
      {job.rehearsal && <p class="rehearsal">{label.notReal}</p>}
      <h1>{job.title}</h1>
      <nav class="more">
        <a class="button main" href={`/jobs/${job.id}/layout`}>
          {layout.link}
        </a>
        <a class="button" href={`/jobs/${job.id}`}>
          {label.guide}
        </a>
      </nav>
      <section>
        <h2>{label.drawing}</h2>
        <TentDrawing plan={plan} />
      </section>
      <Table name={label.pieces} rows={plan.pieces.map((p) => [p.order, pieceName(p.id)])} />
      <Table name={label.kit} rows={plan.kit.map((k) => [k.count, kitName(k.item)])} />
    </main>
  </Page>
);

const Table = ({ name, rows }: { name: string; rows: readonly (readonly [number, string])[] }) => (
  <section>
    <table class="counts">
      <caption>{name}</caption>
      {rows.map(([count, what]) => (
        <tr>
          <td>{count}</td>
          <th scope="row">{what}</th>
        </tr>
      ))}
    </table>
  </section>
);
