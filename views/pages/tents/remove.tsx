import { Page } from "../../parts/page.tsx";
import type { Words } from "../../text/words.ts";

type Props = { tent: { readonly id: string; readonly name: string; readonly version: number }; newKey: () => string; words: Words };

/** Asks once more before a tent is taken out of the list. */
export const RemoveTentPage = ({ tent: { id, name, version }, newKey, words, words: { tents } }: Props) => (
  <Page words={words} title={tents.remove} styles="tents">
    <main class="home">
      <h1>{tents.removeTitle(name)}</h1>
      <p>{tents.removeTold}</p>
      <form method="post" action={`/tents/${id}/remove`}>
        <input type="hidden" name="key" value={newKey()} />
        <input type="hidden" name="version" value={String(version)} />
        <button type="submit">{tents.remove}</button>
      </form>
      <a class="button main" href={`/tents/${id}`}>
        {tents.keep}
      </a>
    </main>
  </Page>
);
