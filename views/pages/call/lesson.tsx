import { figureId, HandWork } from "../../drawing/hand-work/hand-work.tsx";
import type { Screen } from "../../parts/say-form.tsx";

/** `isLarge`: the drawings stand as large as they get; elsewhere a press on one leads to where they do. */
type Props = Screen & { readonly isLarge?: boolean };

/** Why a call is made, how it is done well with its drawings of the hand work, and what goes wrong. */
export const Lesson = ({ guide: { call, handWork, job }, words, words: { guide: text }, isLarge = false }: Props) =>
  call && (
    <dl class="lesson">
      <dt>{text.why}</dt>
      <dd>{call.why}</dd>
      <dt>{text.well}</dt>
      <dd>{call.well}</dd>
      {handWork.map((id) => (
        <dd>
          {isLarge ? (
            <HandWork id={id} words={words} />
          ) : (
            <a class="hand-large" href={`/jobs/${job}/call#${figureId(id)}`}>
              <HandWork id={id} words={words} />
            </a>
          )}
        </dd>
      ))}
      <dt>{text.wrong}</dt>
      <dd>{call.wrong}</dd>
    </dl>
  );
