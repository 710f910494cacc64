import { PlanFields } from "../weather-plan/form.tsx";
import type { HeldForecast } from "../weather-plan/state.ts";
import { ForecastPart } from "../weather-plan/view.tsx";
import { DraftPart, type PartProps } from "./part.tsx";

type Props = PartProps & { readonly forecast: HeldForecast | null; readonly zone: string };

/** The weather plan and the forecast of a job before it is opened: what is agreed and forecast, and the gusts of the sheet that it meets. */
export const DraftWeatherPage = ({ draft, title, message, forecast, zone, ...filled }: Props) => {
  const { words } = filled;
  return (
    <DraftPart
      part="weather-plan"
      step="crew"
      text={words.weatherPlan}
      over={forecast && <ForecastPart forecast={forecast} zone={zone} words={words} />}
      draft={draft}
      title={title}
      message={message}
      words={words}
    >
      <PlanFields {...filled} />
    </DraftPart>
  );
};
