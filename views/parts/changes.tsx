import type { Effect } from "../pages/guide/state.ts";
import type { Words } from "../text/words.ts";

/** What a changed plan changes, which answers it opens again, and where the guide would go on. */
export const Changes = ({ changes, asksAgain, added, goesOnAt, words: { changes: text } }: Effect & { words: Words }) => (
  <div class="changes">
    <h2>{text.what}</h2>
    {changes.length === 0 ? (
      <p>{text.nothing}</p>
    ) : (
      <ul>
        {changes.map((change) => (
          <li>{change}</li>
        ))}
      </ul>
    )}
    {asksAgain.length === 0 ? (
      <p>{text.noneAgain}</p>
    ) : (
      <details>
        <summary>{text.again(asksAgain.length)}</summary>
        <ul>
          {asksAgain.map((ask) => (
            <li>{ask}</li>
          ))}
        </ul>
      </details>
    )}
    {added.length > 0 && (
      <details>
        <summary>{text.added(added.length)}</summary>
        <ul>
          {added.map((call) => (
            <li>{call}</li>
          ))}
        </ul>
      </details>
    )}
    <p>{text.goesOn(goesOnAt)}</p>
  </div>
);
