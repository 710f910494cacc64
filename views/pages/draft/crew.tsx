import { ROLES } from "../../../machines/install/roles.ts";
import { Wrong } from "../../parts/fields.tsx";
import { wrongId } from "../../regions.ts";
import type { Words } from "../../text/words.ts";
import { ForecastPart } from "../weather-plan/view.tsx";
import { Frame, Send, Unpressed } from "./frame.tsx";
import type { CrewStepProps, PersonRow, StepProps } from "./state.ts";

type RowProps = Pick<StepProps, "problems" | "words"> & { row: number };

const Was = ({ name, value }: { name: string; value: string }) => <input type="hidden" name={`was.${name}`} value={value} />;

const Role = ({ row, role, label, words }: { row: number; role: string; label: string; words: Words }) => (
  <>
    <select name={`crew.${row}.role`} aria-label={label}>
      {ROLES.map((r) => (
        <option value={r} selected={role === r}>
          {words.roleName(r)}
        </option>
      ))}
    </select>
    <Was name={`crew.${row}.role`} value={role} />
  </>
);

/** A name that stands in a row: to be typed, where there is none or it is wrong. */
const Name = ({ row, name, problems, words }: RowProps & { name: string }) => (
  <>
    <input
      name={`crew.${row}.name`}
      value={name}
      maxlength={200}
      autocomplete="off"
      aria-label={words.draft.newPerson}
      placeholder={words.draft.newPerson}
      aria-describedby={wrongId(`crew.${row}.name`)}
      aria-invalid={problems[`crew.${row}.name`] ? "true" : undefined}
    />
    <Was name={`crew.${row}.name`} value={name} />
  </>
);

/** Somebody who is known: ticked or not, with the role they last had. */
const Known = ({ row, name, role, on, problems, words }: RowProps & PersonRow) => (
  <div class="person">
    {problems[`crew.${row}.name`] && <Name row={row} name={name} problems={problems} words={words} />}
    <label class="tick">
      <input type="checkbox" name={`crew.${row}.on`} value="yes" checked={on} aria-label={words.draft.onIt(name)} />
      <span>{name}</span>
    </label>
    <Was name={`crew.${row}.on`} value={on ? "yes" : ""} />
    <Role row={row} role={role} label={words.draft.roleOf(name)} words={words} />
    <Wrong name={`crew.${row}.name`} problems={problems} />
  </div>
);

const Empty = ({ row, role, problems, words }: RowProps & { role: string }) => (
  <div class="person">
    <Name row={row} name="" problems={problems} words={words} />
    <Role row={row} role={role} label={words.draft.roleOfNew} words={words} />
  </div>
);

/** Who is on the job: the firm's people as they were last, and whoever is new. */
export const CrewStep = ({ rows, empty, forecast, zone, ...props }: CrewStepProps & { news: string | null }) => {
  const part = { problems: props.problems, words: props.words };
  return (
    <Frame step="crew" {...props}>
      <form method="post" action={`/drafts/${props.draft}/crew`}>
        <Unpressed go="more" words={props.words} />
        <p class="told">{props.words.draft.everybody}</p>
        <Wrong name="crew" problems={props.problems} />
        {rows.map((person) => (
          <Known {...part} {...person} />
        ))}
        {empty.map(({ row, role }) => (
          <Empty {...part} row={row} role={role} />
        ))}
        {forecast && (
          <div class="weather-plan">
            <ForecastPart forecast={forecast} zone={zone} words={props.words} />
          </div>
        )}
        <Send words={props.words} main={props.words.draft.open}>
          <button type="submit" name="go" value="weather">
            {props.words.weatherPlan.onDraft}
          </button>
          <button type="submit" name="go" value="more">
            {props.words.draft.moreRows}
          </button>
          {rows.length > 0 && (
            <button type="submit" name="go" value="people">
              {props.words.draft.toPeople}
            </button>
          )}
        </Send>
      </form>
    </Frame>
  );
};
