import { RecordDigest } from "../../parts/digests.tsx";
import type { HurtState } from "../../parts/hurt-state.ts";
import { Page } from "../../parts/page.tsx";
import type { Words } from "../../text/words.ts";
import type { Digests } from "./state.ts";

/** What a digest from paper comes to, in words; `same` where it stands for something that is as it was. */
export type CheckedDigest = { readonly typed: string; readonly same: boolean; readonly told: readonly string[] };
type Props = {
  readonly job: { readonly id: string; readonly title: string };
  readonly record: Digests["record"];
  readonly checked: CheckedDigest | null;
  readonly hurt: HurtState | null;
  readonly words: Words;
};

/** A digest is typed off paper: which entry it stands for, or that none of this record comes to it. */
export const CheckPage = ({ job, record, checked, hurt, words, words: { page, proof, record: text } }: Props) => (
  <Page words={words} title={proof.checkTitle} where={{ on: "record", job }} styles="proof" hurt={hurt} follows={job.id} hurtWay={job.id}>
    <main class="proof" hx-ignore>
      <h1>{proof.checkTitle}</h1>
      <p class="what">{job.title}</p>
      {checked && (
        <div class={checked.same ? "verdict" : "verdict broken"} id="verdict" role="status">
          {checked.told.map((sentence) => (
            <p>{sentence}</p>
          ))}
        </div>
      )}
      <form method="get" class="typed">
        <label>
          {proof.digest}
          <small>{proof.checkTold}</small>
          <input
            name="digest"
            value={checked?.typed}
            autocomplete="off"
            autocapitalize="characters"
            spellcheck={false}
            maxlength={60}
            required
          />
        </label>
        <button type="submit" class="main">
          {proof.checkIt}
        </button>
      </form>
      <RecordDigest record={record} words={words} />
      <nav class="ways">
        <a class="button" href={`/jobs/${job.id}/proof`}>
          {proof.link}
        </a>
        <a class="button" href={`/jobs/${job.id}/record`}>
          {text.link}
        </a>
        <a class="button" href={`/jobs/${job.id}`}>
          {page.guide}
        </a>
      </nav>
    </main>
  </Page>
);
