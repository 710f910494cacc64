import type { Words } from "../../text/words.ts";
import type { Choice, FindingsState, Looked } from "./state.ts";

type Props = { readonly state: Pick<FindingsState, "looked" | "choices">; readonly words: Words };

/** What to look for, as a plain form: its address is that of what is left. */
export const Look = ({ state: { looked, choices }, words: { findings } }: Props) => {
  const isLooking = Object.values(looked).some((value) => value !== "");
  const pick = (name: keyof FindingsState["choices"], label: string) => (
    <Pick name={name} label={label} any={findings.any} choices={choices[name]} chosen={looked[name]} />
  );
  return (
    <details class="look" open={isLooking}>
      <summary>{isLooking ? findings.looking : findings.look}</summary>
      <form method="get" action="/findings">
        <Typed name="crew" label={findings.crew} told={findings.byName} looked={looked} />
        <Typed name="lead" label={findings.lead} told={findings.byName} looked={looked} />
        {pick("tent", findings.tent)}
        {pick("phase", findings.phase)}
        {pick("kind", findings.kindOf)}
        {pick("state", findings.state)}
        <Typed name="from" label={findings.from} told={findings.day} looked={looked} isDay />
        <Typed name="to" label={findings.to} told={findings.day} looked={looked} isDay />
        <button type="submit" class="main">
          {findings.show}
        </button>
        {isLooking && (
          <a class="button" href="/findings">
            {findings.showAll}
          </a>
        )}
      </form>
    </details>
  );
};

type TypedProps = {
  readonly name: keyof Looked;
  readonly label: string;
  readonly told: string;
  readonly looked: Looked;
  readonly isDay?: boolean;
};

const Typed = ({ name, label, told, looked, isDay = false }: TypedProps) => (
  <label>
    {label}
    <small>{told}</small>
    <input name={name} type={isDay ? "date" : "text"} value={looked[name]} maxlength={isDay ? undefined : 60} autocomplete="off" />
  </label>
);

type PickProps = {
  readonly name: string;
  readonly label: string;
  readonly any: string;
  readonly choices: readonly Choice[];
  readonly chosen: string;
};

const Pick = ({ name, label, any, choices, chosen }: PickProps) => (
  <label>
    {label}
    <select name={name}>
      <option value="">{any}</option>
      {choices.map(({ value, text }) => (
        <option value={value} selected={value === chosen}>
          {text}
        </option>
      ))}
    </select>
  </label>
);
