import { ORDER_OF_USE, USUAL_SPARE } from "../../machines/tent/load.ts";
import type { KitItem } from "../../machines/tent/types.ts";
import { wrongId } from "../regions.ts";
import { type Filled, Wrong } from "./fields.tsx";

export const kitFieldNames: readonly string[] = ORDER_OF_USE.flatMap((item) => [`kit.${item}.spare`, `kit.${item}.unitLb`]);

const Cell = ({ name, values, problems, words }: Filled & { name: string }) => (
  <td>
    <input
      name={name}
      value={values[name] ?? ""}
      maxlength={20}
      autocomplete="off"
      aria-label={words.fieldName(name)}
      aria-describedby={wrongId(name)}
      aria-invalid={problems[name] ? "true" : undefined}
    />
    <Wrong name={name} problems={problems} />
  </td>
);

const usual = (item: KitItem) => Math.round((USUAL_SPARE[item] ?? 0) * 1e4) / 100;

/** The yard's notes on the kit: spares in percent, weight of one in lb. What is left empty is not known. */
export const KitFields = ({ values, problems, words, words: { kitName, tents } }: Filled) => (
  <details class="kit-notes" open={kitFieldNames.some((name) => values[name] || problems[name])}>
    <summary>{tents.groups.kit}</summary>
    <p>{tents.groups.kitHint}</p>
    <table>
      <thead>
        <tr>
          <th scope="col">{tents.kitTable.item}</th>
          <th scope="col">{tents.kitTable.spare}</th>
          <th scope="col">{tents.kitTable.weight}</th>
        </tr>
      </thead>
      <tbody>
        {ORDER_OF_USE.map((item) => (
          <tr>
            <th scope="row">
              {kitName(item)}
              <small>{tents.kitTable.usual(usual(item))}</small>
            </th>
            <Cell name={`kit.${item}.spare`} values={values} problems={problems} words={words} />
            <Cell name={`kit.${item}.unitLb`} values={values} problems={problems} words={words} />
          </tr>
        ))}
      </tbody>
    </table>
  </details>
);
