import type { TentPlan } from "../../../machines/tent/types.ts";
import { JobScreen } from "../../parts/job-screen.tsx";
import type { Screen } from "../../parts/say-form.tsx";
import { PlacesDrawing } from "./places.tsx";
import type { Asking, Ended, Told } from "./state.ts";

type Props = { readonly screen: Screen; readonly plan: TentPlan };

const optionText = ({ texts }: Pick<Asking, "texts">, id: string): string => texts.options.find((option) => option.id === id)?.text ?? "";
const pathOf = (screen: Screen): string => `/jobs/${screen.guide.job}/learn/questions`;

/** One question a page, with a press for each answer. */
export const QuestionPage = ({ screen, plan, asking }: Props & { asking: Asking }) => {
  const { learn } = screen.words;
  const { no, of, texts, kind } = asking;
  return (
    <JobScreen screen={screen} title={texts.ask} class="learn question">
      <p class="counted">{learn.question(no + 1, of)}</p>
      {texts.about !== null && <blockquote>{texts.about}</blockquote>}
      {kind === "one" && <OneOf screen={screen} asking={asking} />}
      {kind === "order" && <InOrder screen={screen} asking={asking} />}
      {kind === "place" && <Pointed screen={screen} plan={plan} asking={asking} />}
    </JobScreen>
  );
};

type Form = { readonly screen: Screen; readonly asking: Asking };

/** An answer, sent: what is right is worked out where it arrives. */
const Answer = ({ screen, asking, given, text, main = false }: Form & { given: readonly string[]; text: string; main?: boolean }) => (
  <form method="post" action={pathOf(screen)} class={main ? "main" : undefined}>
    <input type="hidden" name="round" value={asking.round} />
    <input type="hidden" name="no" value={asking.no} />
    <input type="hidden" name="shown" value={asking.shown} />
    <input type="hidden" name="given" value={given.join(",")} />
    <button type="submit">{text}</button>
  </form>
);

const OneOf = ({ screen, asking }: Form) => (
  <div class="options">
    {asking.texts.options.map(({ id, text }) => (
      <Answer screen={screen} asking={asking} given={[id]} text={text} />
    ))}
  </div>
);

const wayTo = (screen: Screen, { round, no }: Asking, so: readonly string[]): string =>
  `${pathOf(screen)}?round=${encodeURIComponent(round)}&no=${no}${so.length === 0 ? "" : `&so=${so.join(",")}`}`;

/** The first is pressed, then the next; once one is left it is the last. */
const InOrder = ({ screen, asking }: Form) => {
  const { learn } = screen.words;
  const left = asking.texts.options.filter(({ id }) => !asking.so.includes(id));
  return (
    <>
      {asking.so.length > 0 && (
        <ol class="so">
          {asking.so.map((id) => (
            <li>{optionText(asking, id)}</li>
          ))}
        </ol>
      )}
      <p>{asking.so.length === 0 ? learn.pickFirst : learn.pickNext}</p>
      <div class="options">
        {left.map(({ id, text }) => {
          const rest = left.filter((option) => option.id !== id);
          const so = [...asking.so, id];
          return rest.length <= 1 ? (
            <Answer screen={screen} asking={asking} given={[...so, ...rest.map((option) => option.id)]} text={text} />
          ) : (
            <a class="button" href={wayTo(screen, asking, so)}>
              {text}
            </a>
          );
        })}
        {asking.so.length > 0 && (
          <a class="button quiet" href={wayTo(screen, asking, [])}>
            {learn.startOver}
          </a>
        )}
      </div>
    </>
  );
};

/** A press in the drawing points, and a press below it answers. */
const Pointed = ({ screen, plan, asking }: Form & { plan: TentPlan }) => {
  const { learn } = screen.words;
  const at = asking.places.find(({ id }) => id === asking.so.at(-1)) ?? null;
  return (
    <>
      <PlacesDrawing
        plan={plan}
        places={asking.places}
        at={at?.id ?? null}
        wayTo={(id) => wayTo(screen, asking, [id])}
        words={screen.words}
      />
      {at && <p role="status">{learn.pointed(at.no)}</p>}
      {at && <Answer screen={screen} asking={asking} given={[at.id]} text={learn.point(at.no)} main />}
      {!at && (
        <div class="options numbers">
          {asking.places.map(({ id, no }) => (
            <Answer screen={screen} asking={asking} given={[id]} text={learn.point(no)} />
          ))}
        </div>
      )}
    </>
  );
};

/** How it was answered, what is right, and why. */
export const ToldPage = ({ screen, plan, told }: Props & { told: Told }) => {
  const { learn } = screen.words;
  return (
    <JobScreen screen={screen} title={told.isRight ? learn.right : learn.wrong} class="learn told">
      <p class="counted">{learn.question(told.no + 1, told.of)}</p>
      <p>{told.texts.ask}</p>
      {told.texts.about !== null && <blockquote>{told.texts.about}</blockquote>}
      {told.kind === "place" && (
        <PlacesDrawing plan={plan} places={told.places} at={told.right[0] ?? null} wayTo={null} words={screen.words} />
      )}
      <RightIs told={told} screen={screen} />
      <a class="button main" href={`${pathOf(screen)}?round=${encodeURIComponent(told.round)}`}>
        {told.isLast ? learn.over : learn.next}
      </a>
      {told.because && (
        <dl class="lesson">
          <dt>{learn.why}</dt>
          <dd>{told.because.why}</dd>
          {told.because.wrong !== null && <dt>{learn.goesWrong}</dt>}
          {told.because.wrong !== null && <dd>{told.because.wrong}</dd>}
        </dl>
      )}
      <div class="tiles">
        {told.hands !== null && (
          <a class="button" href={`/hand-work#${told.hands}`}>
            {learn.showHands}
          </a>
        )}
        <a class="button" href={`/jobs/${screen.guide.job}/layout`}>
          {learn.showLayout}
        </a>
      </div>
    </JobScreen>
  );
};

const RightIs = ({ told, screen: { words } }: { told: Told; screen: Screen }) => {
  const { learn } = words;
  if (told.kind === "place") return <p class="right-is">{learn.marked(told.places.find(({ id }) => id === told.right[0])?.no ?? 0)}</p>;
  if (told.kind === "one")
    return (
      <p class="right-is">
        {learn.rightIs} <b>{optionText(told, told.right[0]!)}</b>
      </p>
    );
  return (
    <>
      <p>{learn.rightOrder}</p>
      <ol class="so">
        {told.right.map((id) => (
          <li>{optionText(told, id)}</li>
        ))}
      </ol>
    </>
  );
};

/** A round at its end. */
export const EndedPage = ({ screen, ended }: { screen: Screen; ended: Ended }) => {
  const { learn } = screen.words;
  return (
    <JobScreen screen={screen} title={learn.over} class="learn ended">
      <p>{learn.tally(ended.right, ended.of)}</p>
      {ended.missed && <p>{learn.comesBack}</p>}
      <a class="button main" href={`/jobs/${screen.guide.job}/learn`}>
        {learn.back}
      </a>
    </JobScreen>
  );
};
