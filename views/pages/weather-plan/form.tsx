import { AT_60, AT_80, AT_LIMIT, PLAN_MINUTES, type PlanMinutes, WARNED_BY, WATCHED_BY } from "../../../machines/install/weather-plan.ts";
import { own } from "../../../machines/lookup/own.ts";
import { type Filled, type Values, Wrong } from "../../parts/fields.tsx";
import { wrongId } from "../../regions.ts";
import type { Words } from "../../text/words.ts";

const CHOSEN: readonly (readonly [string, readonly string[]])[] = [
  ["weatherPlan.watchedBy", WATCHED_BY],
  ["weatherPlan.warnedBy", WARNED_BY],
  ["weatherPlan.at60", AT_60],
  ["weatherPlan.at80", AT_80],
  ["weatherPlan.atLimit", AT_LIMIT],
];
const TIMES = ["forecast.from", "forecast.to", "forecast.readAt", "forecast.clearBy"] as const;

type Props = {
  readonly job: string;
  readonly words: Words;
  readonly values: Values;
  readonly problems: Values;
  readonly newKey: () => string;
};

/** The form of a weather plan and a forecast: both are a change of the job, which a second person agrees to. */
export const PlanForm = ({ job, newKey, ...filled }: Props) => {
  const { weatherPlan: text } = filled.words;
  return (
    <form method="post" action={`/jobs/${job}/weather-plan`}>
      <input type="hidden" name="key" value={newKey()} />
      <PlanFields {...filled} />
      <p>{text.putsForward}</p>
      <button type="submit" class="main">
        {text.put}
      </button>
    </form>
  );
};

/** The fields of both parts, whatever form they stand in. */
export const PlanFields = (filled: Filled) => {
  const { weatherPlan: text } = filled.words;
  return (
    <>
      <fieldset>
        <legend>{text.planPart}</legend>
        <div class="fields-in">
          {CHOSEN.map(([name, options]) => (
            <Choice name={name} options={options} {...filled} />
          ))}
          {(Object.keys(PLAN_MINUTES) as PlanMinutes[]).map((key) => (
            <Typed
              name={`weatherPlan.${key}`}
              hint={text.range(PLAN_MINUTES[key].from, PLAN_MINUTES[key].to)}
              inputmode="numeric"
              {...filled}
            />
          ))}
        </div>
      </fieldset>
      <fieldset>
        <legend>{text.forecastPart}</legend>
        <p>{text.forecastHint}</p>
        <div class="fields-in">
          <Typed name="forecast.gustMph" inputmode="decimal" {...filled} />
          <Typed name="forecast.issuedBy" {...filled} />
          {TIMES.map((name) => (
            <Typed name={name} type="datetime-local" {...filled} />
          ))}
        </div>
      </fieldset>
    </>
  );
};

type FieldProps = Filled & { readonly name: string };

const Choice = ({
  name,
  options,
  values,
  problems,
  words: { weatherPlan: text },
}: FieldProps & { readonly options: readonly string[] }) => (
  <label for={`f-${name}`}>
    <span>{text.field(name)}</span>
    <select id={`f-${name}`} name={name} aria-describedby={wrongId(name)} aria-invalid={problems[name] ? "true" : undefined}>
      {options.map((option) => (
        <option value={option} selected={values[name] === option}>
          {own(text.picks(name), option) ?? option}
        </option>
      ))}
    </select>
    <Wrong name={name} problems={problems} />
  </label>
);

type TypedProps = FieldProps & { readonly hint?: string; readonly type?: "datetime-local"; readonly inputmode?: "numeric" | "decimal" };

const Typed = ({ name, hint, type, inputmode, values, problems, words: { weatherPlan: text } }: TypedProps) => (
  <label for={`f-${name}`}>
    <span>
      {text.field(name)}
      {hint && <small>{hint}</small>}
    </span>
    <input
      id={`f-${name}`}
      name={name}
      type={type ?? "text"}
      inputmode={inputmode}
      value={values[name] ?? ""}
      maxlength={80}
      autocomplete="off"
      aria-describedby={wrongId(name)}
      aria-invalid={problems[name] ? "true" : undefined}
    />
    <Wrong name={name} problems={problems} />
  </label>
);
