import type { Screening } from "../../../machines/loads/screening.ts";
import { LayoutDrawing } from "../../drawing/layout.tsx";
import { Changes } from "../../parts/changes.tsx";
import type { Values } from "../../parts/fields.tsx";
import type { HurtState } from "../../parts/hurt-state.ts";
import { Page } from "../../parts/page.tsx";
import type { Words } from "../../text/words.ts";
import type { Effect } from "../guide/state.ts";
import { LoadLines } from "../site/loads.tsx";
import { BallastSection } from "./ballast.tsx";
import { AnchorFields } from "./form.tsx";
import type { AnchorsState } from "./state.ts";

type Props = {
  readonly state: AnchorsState;
  readonly words: Words;
  /** What stands in the form, and what is wrong with it; `null` for who may not change it. */
  readonly form: { readonly values: Values; readonly problems: Values; readonly key: string } | null;
  readonly message: string | null;
  /** What a change that was looked at would do. */
  readonly effect: Effect | null;
  readonly hurt: HurtState | null;
};

/** What the anchors of a job are screened by, what that comes to, and the form that puts a change of it forward. */
export const AnchorsPage = ({ state, words, words: { anchors: text }, form, message, effect, hurt }: Props) => (
  <Page
    words={words}
    title={text.title}
    where={{ on: null, job: { id: state.job, title: state.title } }}
    styles="anchors"
    hurt={hurt}
    follows={state.job}
    hurtWay={state.job}
  >
    <main class="draft anchors">
      <h1>{text.title}</h1>
      {message !== null && (
        <p class="alarm" role="alert">
          {message}
        </p>
      )}
      {state.screening === null ? <p>{text.notScreened}</p> : <Found screening={state.screening} state={state} words={words} />}
      {form && (
        <form method="post" action={`/jobs/${state.job}/anchors`}>
          <h2>{text.facts}</h2>
          <p>{text.intro}</p>
          <input type="hidden" name="key" value={form.key} />
          <AnchorFields values={form.values} problems={form.problems} words={words} />
          {effect && <Changes {...effect} words={words} />}
          <button type="submit" name="show" value="changes">
            {text.look}
          </button>
          <button type="submit" class="main">
            {text.put}
          </button>
        </form>
      )}
      <a class="button" href={`/jobs/${state.job}`}>
        {words.page.guide}
      </a>
    </main>
  </Page>
);

type FoundProps = { readonly screening: Screening; readonly state: AnchorsState; readonly words: Words };

const Found = ({ screening, state: { worst, ballast, plan }, words, words: { anchors: text, loads } }: FoundProps) => (
  <>
    <section>
      <h2>{text.found}</h2>
      <p class="verdict">
        <b>{loads.verdict(screening.verdict)}</b>
      </p>
      {screening.ratio !== null && worst !== null && <p>{text.worst(worst, loads.ratio(screening.ratio, screening.isAtLeast))}</p>}
      <p>{text.opensNothing}</p>
      <Listed title={text.why} texts={screening.reasons.map(loads.reason)} />
      <Listed title={text.instead} texts={screening.instead.map(loads.instead)} />
      {screening.pressure && <Pressures screening={screening} words={words} />}
    </section>
    <BallastSection ballast={ballast} plan={plan} words={words} />
    <Ratios screening={screening} plan={plan} words={words} />
    <details class="all-lines">
      <summary>{text.lines}</summary>
      <LoadLines screening={screening} words={words} />
    </details>
  </>
);

const Pressures = ({ screening: { pressure }, words: { anchors: text, loads } }: Pick<FoundProps, "screening" | "words">) => {
  const psf = (n: number | null) => (n === null ? text.pressureNone : loads.amount({ n, unit: "psf" }));
  return pressure ? (
    <p>
      {text.pressures(psf(pressure.ascePsf), psf(pressure.enPsf), psf(pressure.psf))} {text.fromMemory}
    </p>
  ) : null;
};

const Listed = ({ title, texts }: { readonly title: string; readonly texts: readonly string[] }) =>
  texts.length === 0 ? null : (
    <>
      <h3>{title}</h3>
      <ul>
        {texts.map((one) => (
          <li>{one}</li>
        ))}
      </ul>
    </>
  );

type RatiosProps = Pick<FoundProps, "screening" | "words"> & Pick<AnchorsState, "plan">;

const Ratios = ({ screening: { ratio: any, stations }, plan, words, words: { anchors: text, layout, loads } }: RatiosProps) => (
  <div>
    <h2>{text.stations}</h2>
    <p>{text.ratios}</p>
    {any !== null && (
      <figure class="drawn" aria-label={layout.drawing} tabindex={0}>
        <LayoutDrawing plan={plan} ratios={stations} words={words} />
      </figure>
    )}
    <ul class="ratios">
      {stations.map(({ station, ratio, isAtLeast, verdict }) => (
        <li>
          <b>{station}</b> {ratio !== null && loads.ratio(ratio, isAtLeast)} <span>{loads.verdict(verdict)}</span>
        </li>
      ))}
    </ul>
  </div>
);
