import type { Screen } from "../../parts/say-form.tsx";

/** Why a call is made, how it is done well, and what goes wrong. */
export const Lesson = ({ guide: { call }, words: { guide: text } }: Screen) =>
  call && (
    <dl class="lesson">
      <dt>{text.why}</dt>
      <dd>{call.why}</dd>
      <dt>{text.well}</dt>
      <dd>{call.well}</dd>
      <dt>{text.wrong}</dt>
      <dd>{call.wrong}</dd>
    </dl>
  );
