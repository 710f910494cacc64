import { type Filled, Wrong } from "../../parts/fields.tsx";
import { wrongId } from "../../regions.ts";

export type Choices = readonly (readonly [value: string, text: string])[];
type FieldProps = Filled & { readonly name: string; readonly text: string };

/** A number as somebody measured it: feet and inches may be typed as they are said. */
export const Entry = ({ name, text, values, problems }: FieldProps) => (
  <label for={`f-${name}`}>
    <span>{text}</span>
    <input
      id={`f-${name}`}
      name={name}
      value={values[name] ?? ""}
      maxlength={40}
      autocomplete="off"
      inputmode="decimal"
      aria-invalid={problems[name] ? "true" : undefined}
      aria-describedby={wrongId(name)}
    />
    <Wrong name={name} problems={problems} />
  </label>
);

export const Choice = ({ name, text, options, values, problems }: FieldProps & { readonly options: Choices }) => (
  <label for={`f-${name}`}>
    <span>{text}</span>
    <select id={`f-${name}`} name={name} aria-describedby={wrongId(name)}>
      {options.map(([value, shown]) => (
        <option value={value} selected={values[name] === value}>
          {shown}
        </option>
      ))}
    </select>
    <Wrong name={name} problems={problems} />
  </label>
);
