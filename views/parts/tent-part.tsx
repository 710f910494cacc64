import type { TentPlan } from "../../machines/tent/types.ts";
import { TentDrawing } from "../drawing/tent.tsx";
import { regions, wrongId } from "../regions.ts";
import type { Words } from "../text/words.ts";
import type { Filled, Values } from "./fields.tsx";
import { KitFields, kitFieldNames } from "./kit-fields.tsx";
import { factsOf, glanceOf } from "./tent-facts.ts";
import { TentFields, tentFieldNames } from "./tent-fields.tsx";

/** What a form's tent comes to: its plan, or what is wrong by field, of which `missing` were left empty. */
export type Preview = { readonly plan: TentPlan } | { readonly problems: Values; readonly missing: readonly string[] };

export const Rows = ({ rows }: { rows: readonly (readonly [string, string])[] }) => (
  <table class="facts">
    <tbody>
      {rows.map(([name, value]) => (
        <tr>
          <th scope="row">{name}</th>
          <td>{value}</td>
        </tr>
      ))}
    </tbody>
  </table>
);

/** The plan drawn and counted; or, where there is none, that there is none, and why. */
const Shown = ({ preview, words }: { preview: Preview; words: Words }) => {
  const { fieldName, kitName, tents } = words;
  if ("plan" in preview) {
    return (
      <div class="shown">
        <TentDrawing plan={preview.plan} words={words} />
        <Rows rows={factsOf(preview.plan, words)} />
        <h3>{tents.kit}</h3>
        <Rows rows={preview.plan.kit.map((k) => [kitName(k.item), String(k.count)])} />
      </div>
    );
  }
  const wrong = Object.entries(preview.problems).filter(([field]) => !preview.missing.includes(field));
  return (
    <div class="no-plan">
      {wrong.length > 0 ? (
        <>
          <p>
            <b>{tents.noPlan}</b>
          </p>
          <p>{tents.noPlanWhy}</p>
          <ul>
            {wrong.map(([field, why]) => (
              <li>
                <b>{`${fieldName(field)}: `}</b>
                {why}
              </li>
            ))}
          </ul>
        </>
      ) : (
        <p>{tents.notYet}</p>
      )}
      {preview.missing.length > 0 && <p>{tents.wanted(preview.missing.map((field) => fieldName(field)))}</p>}
    </div>
  );
};

const statusOf = (preview: Preview, words: Words): string => {
  const { tents } = words;
  if ("plan" in preview) return tents.drawn(glanceOf(preview.plan, words));
  return preview.missing.length === Object.keys(preview.problems).length ? tents.notYet : tents.notDrawn;
};

/**
 * A form's tent: its fields, the yard's notes on its kit, and its plan, which follows what is typed. Without scripts the
 * button brings the page back with the plan of what was typed.
 */
export const TentPart = ({ values, problems, words, words: { tents }, preview }: Filled & { preview: Preview }) => (
  <div class="tent-part" hx-post="/tents/preview" hx-trigger="input delay:350ms" hx-swap="none" hx-sync="this:replace">
    <div>
      <TentFields values={values} problems={problems} words={words} />
      <KitFields values={values} problems={problems} words={words} />
      <button type="submit" name="show" value="plan">
        {tents.show}
      </button>
    </div>
    <section class="preview" aria-label={tents.plan} tabindex={0}>
      <h2>{tents.plan}</h2>
      <noscript>
        <p>{tents.oldNoScripts}</p>
      </noscript>
      <div id={regions.tentPlan}>
        <Shown preview={preview} words={words} />
      </div>
    </section>
    <div class="bar">
      <p id={regions.tentStatus} role="status">
        {statusOf(preview, words)}
      </p>
      <p class="old">{tents.old}</p>
    </div>
  </div>
);

/** What a preview changes on the page: the plan, and what is said beside each field. Fields themselves are left alone. */
export const TentPreview = ({ values, problems, words, preview }: Filled & { preview: Preview }) => (
  <>
    <hx-partial hx-target={`#${regions.tentStatus}`} hx-swap="innerHTML">
      {statusOf(preview, words)}
    </hx-partial>
    <hx-partial hx-target={`#${regions.tentPlan}`} hx-swap="innerHTML">
      <Shown preview={preview} words={words} />
    </hx-partial>
    {[...tentFieldNames(values), ...kitFieldNames].map((name) => (
      <hx-partial hx-target={`#${wrongId(name)}`} hx-swap="innerHTML">
        {problems[name] ?? ""}
      </hx-partial>
    ))}
  </>
);
