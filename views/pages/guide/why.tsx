import type { Screen } from "../../parts/say-form.tsx";

/** Why the call is made, and how it is done well. To a trainee also what goes wrong: unfolded, there is time to read. */
export const Why = ({ guide: { call, rehearsal }, words: { guide: text } }: Screen) => {
  if (!call) return null;
  if (rehearsal)
    return (
      <dl class="lesson">
        <dt>{text.why}</dt>
        <dd>{call.why}</dd>
        <dt>{text.wrong}</dt>
        <dd>{call.wrong}</dd>
        <dt>{text.well}</dt>
        <dd>{call.well}</dd>
      </dl>
    );
  return (
    <>
      <details class="why">
        <summary>{text.why}</summary>
        <p>{call.why}</p>
      </details>
      <details class="why">
        <summary>{text.how}</summary>
        <p>{call.well}</p>
      </details>
    </>
  );
};
