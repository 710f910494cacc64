import type { Flag } from "../../machines/record/findings.ts";
import type { TimeTaken } from "../pages/record/state.ts";
import { markName, record } from "../text/en/record.ts";

/** What stands out about an entry, in words. */
export const Marks = ({ marks }: { marks: readonly Flag[] }) =>
  marks.length === 0 ? null : (
    <p class="marks">
      {marks.map((mark) => (
        <strong class={`mark ${mark}`}>{markName(mark)}</strong>
      ))}
    </p>
  );

/** How long each phase took. */
export const Times = ({ times }: { times: readonly TimeTaken[] }) =>
  times.length === 0 ? null : (
    <table class="times">
      <caption>{record.times}</caption>
      {times.map(({ name, text }) => (
        <tr>
          <th scope="row">{name}</th>
          <td>{text}</td>
        </tr>
      ))}
    </table>
  );
