import { PULL_FIELDS } from "../../../machines/install/anchorage-fields.ts";
import { type Filled, type Values, Wrong } from "../../parts/fields.tsx";
import { wrongId } from "../../regions.ts";

const GROUPS = [
  ["wind", ["gustMph", "exposure", "elevationFt", "underRoof"]],
  ["ground", ["material", "soil", "groundState", "factorOfSafety"]],
  ["allows", ["sheetAllows.corner", "sheetAllows.seamEnd", "sheetAllows.side"]],
  ["ballast", ["friction.coefficient", "friction.by"]],
] as const;
const MIN_ROWS = 3;

/** How many rows of pulls stand filled in. */
const rowsIn = (values: Values): number => {
  let rows = 0;
  while (PULL_FIELDS.some((name) => values[`anchorage.pulls.${rows}.${name}`] !== undefined)) rows++;
  return rows;
};

/** All that anchors are screened by, as fields: what is left empty is not known. */
export const AnchorFields = (filled: Filled) => {
  const { anchors: text } = filled.words;
  return (
    <>
      {GROUPS.map(([group, names]) => (
        <fieldset>
          <legend>{text.groups[group]}</legend>
          <div class="fields-in">
            {names.map((name) => (
              <AnchorField
                name={`anchorage.${name}`}
                label={text.label(name)}
                hint={text.hint(name)}
                choices={text.choices(name)}
                {...filled}
              />
            ))}
          </div>
        </fieldset>
      ))}
      <Pulls {...filled} />
    </>
  );
};

/** One row more than is filled in, so that there is always room for the next. */
const Pulls = (filled: Filled) => {
  const { anchors: text } = filled.words;
  const rows = Math.max(MIN_ROWS, rowsIn(filled.values) + 1);
  return (
    <fieldset class="pulls">
      <legend>{text.groups.pulls}</legend>
      <p>{text.pullsIntro}</p>
      <Wrong name="anchorage.pulls" problems={filled.problems} />
      {Array.from({ length: rows }, (_, i) => (
        <fieldset>
          <legend>{text.pull(i + 1)}</legend>
          <div class="fields-in">
            {PULL_FIELDS.map((name) => (
              <AnchorField
                name={`anchorage.pulls.${i}.${name}`}
                label={text.pullFields[name]}
                choices={name === "lbf" ? null : text.choicesOfPull[name]}
                {...filled}
              />
            ))}
          </div>
        </fieldset>
      ))}
      <div class="fields-in">
        <AnchorField
          name="anchorage.rainSincePulls"
          label={text.label("rainSincePulls")}
          choices={text.choices("rainSincePulls")}
          {...filled}
        />
      </div>
    </fieldset>
  );
};

type FieldProps = Filled & {
  readonly name: string;
  readonly label: string;
  readonly hint?: string | undefined;
  readonly choices: readonly (readonly [string, string])[] | null;
};

const AnchorField = ({ name, label, hint, choices, values, problems }: FieldProps) => {
  const told = { id: `f-${name}`, name, "aria-describedby": wrongId(name), "aria-invalid": problems[name] ? ("true" as const) : undefined };
  return (
    <label for={told.id}>
      <span>
        {label}
        {hint && <small>{hint}</small>}
      </span>
      {choices ? (
        <select {...told}>
          {choices.map(([value, shown]) => (
            <option value={value} selected={(values[name] ?? "") === value}>
              {shown}
            </option>
          ))}
        </select>
      ) : (
        <input {...told} value={values[name] ?? ""} inputmode="decimal" maxlength={40} autocomplete="off" />
      )}
      <Wrong name={name} problems={problems} />
    </label>
  );
};
