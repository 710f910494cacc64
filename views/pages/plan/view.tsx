import type { TentPlan } from "../../../machines/tent/types.ts";
import { TentDrawing } from "../../drawing/tent.tsx";
import type { HurtState } from "../../parts/hurt-state.ts";
import { Page } from "../../parts/page.tsx";
import type { Words } from "../../text/words.ts";

type Props = { job: { id: string; title: string; rehearsal: boolean }; plan: TentPlan; hurt: HurtState | null; words: Words };

/** What stands on the ground at a glance: drawn for a phone, the pieces and the kit. Every place and reading is on the layout sheet. */
export const PlanPage = ({ job, plan, hurt, words, words: { kitName, layout, page, pieceName, plan: text } }: Props) => (
  <Page words={words} title={page.plan} where={{ on: "plan", job }} styles="plan" hurt={hurt} follows={job.id} hurtWay={job.id}>
    <main class="plan">
      {job.rehearsal && <p class="rehearsal">{page.notReal}</p>}
      <h1>{job.title}</h1>
      <nav class="more">
        <a class="button main" href={`/jobs/${job.id}/layout`}>
          {layout.link}
        </a>
        <a class="button" href={`/jobs/${job.id}`}>
          {page.guide}
        </a>
      </nav>
      <section>
        <h2>{text.drawing}</h2>
        <TentDrawing plan={plan} words={words} />
      </section>
      <Table name={text.pieces} rows={plan.pieces.map((p) => [p.order, pieceName(p.id)])} />
      <Table name={text.kit} rows={plan.kit.map((k) => [k.count, kitName(k.item)])} />
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
