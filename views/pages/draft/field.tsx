import { own } from "../../../machines/lookup/own.ts";
import { Wrong } from "../../parts/fields.tsx";
import { wrongId } from "../../regions.ts";
import type { StepProps } from "./state.ts";
import { draftField } from "./steps.ts";

type FieldProps = StepProps & { name: string; text?: string };

const DAY = /^\d{4}-\d\d-\d\d$/;

/** A field of a step with its hint, and what is wrong beside it. It is sent with what it showed: left so, it was not typed in. */
export const StepField = ({ name, values, problems, words, untyped, text }: FieldProps) => {
  const { keys, device, options } = draftField(name);
  const { choices, draft, fieldName } = words;
  // A choice shows its first until somebody chooses.
  const value = values[name] || (options?.[0] ?? "");
  const hint = own(draft.hints, name);
  const told = { id: `f-${name}`, name, "aria-describedby": wrongId(name), "aria-invalid": problems[name] ? ("true" as const) : undefined };
  // What is no day cannot stand in a field for days, and would be lost.
  const type = keys === "date" && (value === "" || DAY.test(value)) ? "date" : "text";
  return (
    <label for={`f-${name}`}>
      <span>
        {text ?? own(draft.fields, name) ?? fieldName(name)}
        {hint && <small>{hint}</small>}
      </span>
      {options ? (
        <select {...told}>
          {options.map((o) => (
            <option value={o} selected={value === o}>
              {own(draft.choices, o) ?? own(choices, o) ?? o}
            </option>
          ))}
        </select>
      ) : (
        <input
          {...told}
          type={type}
          value={value}
          maxlength={200}
          autocomplete="off"
          inputmode={keys === "decimal" ? "decimal" : undefined}
          data-device={device && untyped.has(name) ? device : undefined}
        />
      )}
      <Wrong name={name} problems={problems} />
      <input type="hidden" name={`was.${name}`} value={value} />
    </label>
  );
};
