import type { Values } from "../../parts/fields.tsx";
import { Page } from "../../parts/page.tsx";
import { glanceOf } from "../../parts/tent-facts.ts";
import type { Words } from "../../text/words.ts";
import type { Tent } from "./state.ts";

type Pasted = { readonly values: Values; readonly error: { readonly message: string; readonly fields: Values } };
type Props = { saved: readonly Tent[]; examples: readonly Tent[]; newKey: () => string; pasted: Pasted | null; words: Words };

const Line = ({ tent: { id, name, version, plan }, words }: { tent: Tent; words: Words }) => {
  const { tents } = words;
  const seen = plan && glanceOf(plan, words);
  return (
    <a class="button job" href={`/tents/${id}`}>
      <b>{name}</b>
      {version === null && <i>{tents.example}</i>}
      <span>{seen && version !== null ? `${seen.size}, ${seen.ends}` : ""}</span>
      <span>{seen ? tents.glance(seen) : tents.unreadableShort}</span>
    </a>
  );
};

const Lines = ({ tents, words }: { tents: readonly Tent[]; words: Words }) => (
  <div class="lines">
    {tents.map((tent) => (
      <Line tent={tent} words={words} />
    ))}
  </div>
);

/** All tents: saved ones by name, then the examples by size. */
export const TentsPage = ({ saved, examples, newKey, pasted, words, words: { page, tents } }: Props) => (
  <Page words={words} title={tents.title} where={{ on: "tents" }} styles="tents">
    <main class="home tents">
      <h1>{tents.title}</h1>
      <p>{tents.intro}</p>
      <a class="button main" href="/tents/new">
        {tents.add}
      </a>
      <h2>{tents.saved}</h2>
      {saved.length === 0 && <p>{tents.none}</p>}
      <Lines tents={saved} words={words} />
      <details open={pasted !== null}>
        <summary>{tents.paste}</summary>
        {pasted && <PasteProblems message={pasted.error.message} fields={pasted.error.fields} words={words} />}
        <form method="post" action="/tents">
          <input type="hidden" name="key" value={newKey()} />
          <label for="json">
            {tents.pasteText}
            <small>{tents.pasteHint}</small>
            <textarea id="json" name="json" rows={6} spellcheck={false}>
              {pasted?.values.json ?? ""}
            </textarea>
          </label>
          <label for="paste-name">
            {tents.pasteName}
            <small>{tents.pasteNameHint}</small>
            <input id="paste-name" name="name" value={pasted?.values.name ?? ""} maxlength={200} autocomplete="off" />
          </label>
          <button type="submit">{tents.pasteIt}</button>
        </form>
      </details>
      <h2>{tents.examples}</h2>
      <Lines tents={examples} words={words} />
      <a class="button" href="/">
        {page.home}
      </a>
    </main>
  </Page>
);

const PasteProblems = ({ message, fields, words }: Pasted["error"] & { words: Words }) => (
  <div class="alarm" role="alert">
    <p>{message}</p>
    <ul>
      {Object.entries(fields).map(([field, why]) => (
        <li>
          {/^(?:json|spec)$/.test(field) ? "" : <b>{`${words.fieldName(field.replace(/^spec\./, "tent."))}: `}</b>}
          {why}
        </li>
      ))}
    </ul>
  </div>
);
