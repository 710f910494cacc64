import type { KitCatalog } from "../../../machines/tent/load.ts";
import { USUAL_SPARE } from "../../../machines/tent/load.ts";
import type { KitItem } from "../../../machines/tent/types.ts";
import { TentDrawing } from "../../drawing/tent.tsx";
import { Page } from "../../parts/page.tsx";
import { factsOf } from "../../parts/tent-facts.ts";
import { Rows } from "../../parts/tent-part.tsx";
import type { Words } from "../../text/words.ts";
import type { Tent } from "./state.ts";

type Props = { tent: Tent & { readonly kit: KitCatalog | null }; words: Words };

/** One tent: its plan, its facts, and what can be done with it. */
export const TentPage = ({ tent: { id, name, version, plan, kit }, words, words: { kitName, tents } }: Props) => (
  <Page words={words} title={name} styles="tent">
    <main class="home tent">
      <h1>{name}</h1>
      {version === null && (
        <p>
          <b>{tents.example}</b>
        </p>
      )}
      {plan ? (
        <>
          <a class="button main" href={`/drafts/new?tent=${id}`}>
            {tents.useIt}
          </a>
          <div class="do">
            <a class="button" href={`/tents/new?from=${id}`}>
              {tents.copy}
            </a>
            {version !== null && (
              <a class="button" href={`/tents/${id}/edit`}>
                {tents.edit}
              </a>
            )}
          </div>
          <section class="plan-of">
            <TentDrawing plan={plan} words={words} />
            <div>
              <h2>{tents.facts}</h2>
              <Rows rows={factsOf(plan, words)} />
              <h2>{tents.kit}</h2>
              <Rows rows={plan.kit.map((k) => [kitName(k.item), String(k.count)])} />
              {kit && <h2>{tents.yard}</h2>}
              {kit && <Rows rows={Object.entries(kit).map(([item, note]) => [kitName(item), noteOf(item as KitItem, note, words)])} />}
            </div>
          </section>
        </>
      ) : (
        <p class="alarm">{tents.unreadable}</p>
      )}
      <a class="button" href={`/tents/${id}.json`}>
        {tents.asData}
      </a>
      {version !== null && (
        <a class="button" href={`/tents/${id}/remove`}>
          {tents.remove}
        </a>
      )}
      <a class="button" href="/tents">
        {tents.back}
      </a>
    </main>
  </Page>
);

const noteOf = (item: KitItem, { spare, unitLb }: { spare?: number; unitLb?: number }, { tents }: Words) =>
  tents.note(Math.round((spare ?? USUAL_SPARE[item] ?? 0) * 1e6) / 1e4, unitLb ?? null);
