import type { Screen } from "../../parts/say-form.tsx";
import { label } from "../../text/en/page.ts";

/** Why the call is made. To a trainee also what goes wrong, and how it is done well: unfolded, there is time to read. */
export const Why = ({ guide: { call, rehearsal } }: Screen) => {
  if (!call) return null;
  if (rehearsal)
    return (
      <dl class="lesson">
        <dt>{label.why}</dt>
        <dd>{call.why}</dd>
        <dt>{label.wrong}</dt>
        <dd>{call.wrong}</dd>
        <dt>{label.well}</dt>
        <dd>{call.well}</dd>
      </dl>
    );
  return (
    <details class="why">
      <summary>{label.why}</summary>
      <p>{call.why}</p>
    </details>
  );
};
