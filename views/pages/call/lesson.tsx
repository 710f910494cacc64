import { HandWork } from "../../drawing/hand-work/hand-work.tsx";
import type { Screen } from "../../parts/say-form.tsx";

/** Why a call is made, how it is done well with its drawings of the hand work, and what goes wrong. */
export const Lesson = ({ guide: { call, handWork }, words, words: { guide: text } }: Screen) =>
  call && (
    <dl class="lesson">
      <dt>{text.why}</dt>
      <dd>{call.why}</dd>
      <dt>{text.well}</dt>
      <dd>{call.well}</dd>
      {handWork.map((id) => (
        <dd>
          <HandWork id={id} words={words} />
        </dd>
      ))}
      <dt>{text.wrong}</dt>
      <dd>{call.wrong}</dd>
    </dl>
  );
