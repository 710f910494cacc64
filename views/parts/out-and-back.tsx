import type { KitRow } from "../../machines/record/kit-counts.ts";
import type { Words } from "../text/words.ts";

/** What of the kit went out and came back: in words, then line by line. Nothing where nobody counted. */
export const OutAndBack = ({ kit, words: { kitName, outBack } }: { kit: readonly KitRow[]; words: Words }) =>
  kit.length === 0 ? null : (
    <section class="kit">
      <h2>{outBack.title}</h2>
      <ul>
        {outBack.words(kit).map((text) => (
          <li>{text}</li>
        ))}
      </ul>
      <table class="times">
        <thead>
          <tr>
            {Object.entries(outBack.columns).map(([column, name]) => (
              <th scope="col" class={column}>
                {name}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {kit.map(({ item, listed, out, back, difference }) => (
            <tr>
              <th scope="row">{kitName(item)}</th>
              <td class="listed">{listed}</td>
              <td>{out ?? outBack.not}</td>
              <td>{back ?? outBack.not}</td>
              <td class={difference ? "off" : undefined}>{outBack.difference(difference)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
