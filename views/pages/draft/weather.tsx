import type { Filled } from "../../parts/fields.tsx";
import { Page } from "../../parts/page.tsx";
import { PlanFields } from "../weather-plan/form.tsx";
import type { HeldForecast } from "../weather-plan/state.ts";
import { ForecastPart } from "../weather-plan/view.tsx";

type Props = Filled & {
  readonly draft: string;
  /** What the draft is called. */
  readonly title: string;
  readonly forecast: HeldForecast | null;
  readonly zone: string;
  readonly message: string | null;
};

/** The weather plan and the forecast of a job before it is opened: what is agreed and forecast, and the gusts of the sheet that it meets. */
export const DraftWeatherPage = ({ draft, title, forecast, zone, message, ...filled }: Props) => {
  const { words } = filled;
  const { weatherPlan: text } = words;
  return (
    <Page words={words} title={text.title} styles="weather-plan">
      <main class="draft weather-plan">
        <h1>{text.title}</h1>
        <p>{title}</p>
        {message !== null && (
          <p class="alarm" role="alert">
            {message}
          </p>
        )}
        <p>{text.intro}</p>
        {forecast && <ForecastPart forecast={forecast} zone={zone} words={words} />}
        <form method="post" action={`/drafts/${draft}/weather-plan`}>
          <PlanFields {...filled} />
          <button type="submit" class="main">
            {text.keep}
          </button>
        </form>
        <a class="button" href={`/drafts/${draft}/crew`}>
          {text.toDraft}
        </a>
      </main>
    </Page>
  );
};
