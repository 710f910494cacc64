import { LEVELS } from "../../../machines/install/watch.ts";
import type { Values } from "../../parts/fields.tsx";
import type { HurtState } from "../../parts/hurt-state.ts";
import { Page } from "../../parts/page.tsx";
import type { Words } from "../../text/words.ts";
import { PlanForm } from "./form.tsx";
import type { WeatherPlanState } from "./state.ts";

type Props = {
  readonly state: WeatherPlanState;
  readonly words: Words;
  /** What stands in the form, and what is wrong with it; `null` for who may not change it. */
  readonly form: { readonly values: Values; readonly problems: Values; readonly newKey: () => string } | null;
  readonly message: string | null;
  readonly hurt: HurtState | null;
};

/** What is agreed for wind and storm, as the customer's person is told it; and the form that puts it forward. */
export const WeatherPlanPage = ({ state, words, words: { weatherPlan: text }, form, message, hurt }: Props) => (
  <Page
    words={words}
    title={text.title}
    where={{ on: null, job: { id: state.job, title: state.title } }}
    styles="weather-plan"
    hurt={hurt}
    follows={state.job}
    hurtWay={state.job}
  >
    <main class="draft weather-plan">
      <h1>{text.title}</h1>
      {message !== null && (
        <p class="alarm" role="alert">
          {message}
        </p>
      )}
      <p>{text.intro}</p>
      <Plan state={state} words={words} />
      <ForecastPart forecast={state.forecast} zone={state.zone} words={words} />
      {form &&
        (state.plan || state.forecast ? (
          <details open={message !== null}>
            <summary>{text.change}</summary>
            <PlanForm job={state.job} words={words} {...form} />
          </details>
        ) : (
          <PlanForm job={state.job} words={words} {...form} />
        ))}
      <a class="button" href={`/jobs/${state.job}`}>
        {words.page.guide}
      </a>
    </main>
  </Page>
);

const Plan = ({ state: { plan, levels, shelter }, words: { weatherPlan: text } }: Pick<Props, "state" | "words">) =>
  plan === null ? (
    <p>{text.noPlan}</p>
  ) : (
    <>
      <section>
        <h2>{text.levels}</h2>
        <dl class="levels">
          {LEVELS.map((level) => (
            <div>
              <dt>
                <b>{text.gust(levels[level])}</b> <span>{text.level[level]}</span>
              </dt>
              <dd>{text.does(level, plan)}</dd>
            </div>
          ))}
        </dl>
      </section>
      <section>
        <h2>{text.facts}</h2>
        <ul>
          <li>{text.watches(plan.watchedBy)}</li>
          <li>{text.warnings(plan.warnedBy)}</li>
          <li>{text.goTo(shelter)}</li>
          <li>{text.takes(plan.clearMin, plan.lowerMin)}</li>
          <li>{text.readings(plan.readEveryMin, plan.readWindyMin)}</li>
        </ul>
      </section>
    </>
  );

/** What is forecast, and what the limits of the tent make of it. */
export const ForecastPart = ({
  forecast,
  zone,
  words: { weatherPlan: text, when },
}: Pick<WeatherPlanState, "forecast" | "zone"> & Pick<Props, "words">) =>
  forecast === null ? (
    <p>{text.noForecast}</p>
  ) : (
    <section>
      <h2>{text.forecastPart}</h2>
      <p>{text.forecast(forecast.gustMph, when.dayAndClock(zone, forecast.from), when.dayAndClock(zone, forecast.to))}</p>
      <p>{text.issued(forecast.issuedBy, when.dayAndClock(zone, forecast.readAt))}</p>
      <p class={forecast.verdict === "under" ? undefined : "over"}>
        {text.verdict[forecast.verdict](forecast.limitMph)}{" "}
        {forecast.clearBy !== null
          ? text.emptyBy(when.dayAndClock(zone, forecast.clearBy))
          : forecast.verdict === "overLimit"
            ? text.notAgreed
            : ""}
      </p>
    </section>
  );
