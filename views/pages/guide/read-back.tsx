import type { Screen } from "../../parts/say-form.tsx";

/** What was heard on this screen's phone, as large as the call; it goes by itself when its time is over. */
export const SaidBack = ({ guide, words }: Screen) => {
  const { readBack } = guide;
  if (!readBack) return null;
  return (
    <section class="read-back" id={`read-back-${readBack.entry}`} data-of={readBack.entry} aria-live="assertive">
      <p>{words.guide.readBack}</p>
      <p class="words">{readBack.words}</p>
      <div hx-get={`/jobs/${guide.job}/now`} hx-trigger={`load delay:${readBack.leftS + 1}s`} hx-swap="none"></div>
    </section>
  );
};
