import { HouseDigest, RecordDigest } from "../../parts/digests.tsx";
import type { HurtState } from "../../parts/hurt-state.ts";
import { Page } from "../../parts/page.tsx";
import type { Words } from "../../text/words.ts";
import type { Check, ProofState } from "./state.ts";

type Props = { readonly state: ProofState; readonly hurt: HurtState | null; readonly words: Words };

/** What was checked of a record, what that does not show, and what to do where something does not hold. */
export const ProofPage = ({ state, hurt, words, words: { page, proof, record, report } }: Props) => (
  <Page
    words={words}
    title={proof.title}
    where={{ on: "record", job: { id: state.job, title: state.title } }}
    styles="proof"
    hurt={hurt}
    follows={state.job}
    hurtWay={state.job}
  >
    <main class="proof" hx-ignore>
      <h1>{proof.title}</h1>
      <p class="what">{state.title}</p>
      {state.rehearsal && <p class="rehearsal">{page.notReal}</p>}
      <p class={state.holds ? "verdict" : "verdict broken"} id="verdict">
        {state.problem ?? (state.holds ? proof.holds(state.entries) : proof.broken)}
      </p>
      <section>
        <h2>{proof.checked}</h2>
        <ol class="checks">
          {state.checks.map((check) => (
            <Checked check={check} words={words} />
          ))}
        </ol>
      </section>
      <section>
        <h2>{proof.cannot}</h2>
        <ul>
          {state.cannot.map((text) => (
            <li>{text}</li>
          ))}
        </ul>
      </section>
      <section>
        <RecordDigest record={state.digests.record} words={words} />
        <HouseDigest house={state.digests.house} words={words} />
        <p>{proof.writeDown}</p>
      </section>
      <section>
        <h2>{proof.ifNot}</h2>
        <ol>
          {proof.steps.map((text) => (
            <li>{text}</li>
          ))}
        </ol>
      </section>
      <nav class="ways">
        <a class="button" href={`/jobs/${state.job}/check`}>
          {proof.checkTitle}
        </a>
        <a class="button" href={`/jobs/${state.job}/record`}>
          {record.link}
        </a>
        <a class="button" href={`/jobs/${state.job}/report`}>
          {report.link}
        </a>
        <a class="button" href={`/jobs/${state.job}`}>
          {page.guide}
        </a>
      </nav>
    </main>
  </Page>
);

/** How it came out is told by its word and its border. */
const Checked = ({ check: { name, is, told }, words: { proof } }: { check: Check; words: Words }) => (
  <li class={is}>
    <strong class="is">{proof.is[is]}</strong>
    <b>{proof.check(name)}</b>
    {told.map((text) => (
      <p>{text}</p>
    ))}
  </li>
);
