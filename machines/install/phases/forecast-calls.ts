import type { Brief } from "../brief.ts";
import { type Forecast, heldAgainst } from "../forecast.ts";
import { COMPETENT, gate, measure, type Source, yes } from "../gates.ts";
import type { Limits } from "../limits.ts";
import type { StepDraft } from "../step.ts";
import { closedFromMph } from "../watch.ts";

/** How long a forecast that was read at the handover is good for, s: a quarter of a day, as forecasts are issued. Common practice, no source. */
const FRESH_S = 6 * 3600;

/** What the forecast is over, said before anything is begun: the gust at which the tent is empty, or the one from which nothing goes up. */
export function forecastFirst({ forecast, zone }: Brief, limits: Limits): StepDraft[] {
  if (!forecast) return [];
  const { limitMph, source } = closing(limits);
  const params = { gustMph: forecast.gustMph, fromAt: forecast.from, zone };
  switch (heldAgainst(forecast, limitMph, limits.raiseGustMph.is)) {
    case "overLimit":
      return [
        {
          id: "forecast.over",
          params: { ...params, limitMph },
          gate: gate(yes, { source, roles: COMPETENT, reopenedBy: ["weather", "sheet"] }),
        },
      ];
    case "overRaising":
      return [{ id: "forecast.raising", params: { ...params, limitMph: limits.raiseGustMph.is } }];
    case "under":
      return [];
  }
}

/**
 * At the handover: a fresh forecast for the rest of the hire, held against the limit. Over it the gate stays shut until an hour is agreed
 * by which nobody is inside, which is a change of the plan, or an engineer's or maker's paper says otherwise.
 */
export function forecastFresh({ forecast, weatherPlan, zone }: Brief, limits: Limits): StepDraft[] {
  if (!forecast && !weatherPlan) return [];
  const { limitMph, source } = closing(limits);
  const agreedTo = forecast && forecast.clearBy !== null ? forecast.gustMph : 0;
  return [
    {
      id: "forecast.fresh",
      gate: gate(measure("mph", 0, Math.max(Math.ceil(limitMph) - 1, agreedTo)), {
        source,
        roles: COMPETENT,
        validForS: FRESH_S,
        reopenedBy: ["weather", "sheet"],
        paper: "engineer",
      }),
    },
    ...(forecast ? emptyBy(forecast, zone) : []),
  ];
}

function emptyBy({ clearBy }: Forecast, zone: string): StepDraft[] {
  if (clearBy === null) return [];
  return [{ id: "forecast.clearBy", params: { clearBy, zone }, gate: gate(yes, { roles: COMPETENT, reopenedBy: ["weather"] }) }];
}

/** The lower of the two limits that keep the tent closed, with its source. */
function closing(limits: Limits): { readonly limitMph: number; readonly source: Source } {
  const limitMph = closedFromMph(limits);
  return { limitMph, source: (limits.insideGustMph.is === limitMph ? limits.insideGustMph : limits.stopGustMph).source };
}
