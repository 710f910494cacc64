import type { Flag } from "../../machines/record/findings.ts";
import type { TimeTaken } from "../pages/record/state.ts";
import type { Words } from "../text/words.ts";

/** What stands out about an entry, in words. */
export const Marks = ({ marks, words }: { marks: readonly Flag[]; words: Words }) =>
  marks.length === 0 ? null : (
    <p class="marks">
      {marks.map((mark) => (
        <strong class={`mark ${mark}`}>{words.markName(mark)}</strong>
      ))}
    </p>
  );

/** How long each phase took. */
export const Times = ({ times, words }: { times: readonly TimeTaken[]; words: Words }) =>
  times.length === 0 ? null : (
    <table class="times">
      <caption>{words.record.times}</caption>
      {times.map(({ name, text }) => (
        <tr>
          <th scope="row">{name}</th>
          <td>{text}</td>
        </tr>
      ))}
    </table>
  );
