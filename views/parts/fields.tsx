import { own } from "../../machines/lookup/own.ts";
import { wrongId } from "../regions.ts";
import type { Words } from "../text/words.ts";

export type Values = Readonly<Record<string, string>>;
/** What stands in a form's fields, and what is wrong with each, in the screen's language. */
export type Filled = { readonly values: Values; readonly problems: Values; readonly words: Words };

/** What is wrong with a field. It stands there empty too, so that a preview can fill it. */
export const Wrong = ({ name, problems }: { name: string; problems: Values }) => (
  <span class="wrong" id={wrongId(name)}>
    {problems[name] ?? ""}
  </span>
);

type FieldProps = Filled & { name: string; text?: string; options?: readonly string[]; most?: number };

/** A labeled field with what is wrong beside it: a choice where it has `options`, otherwise text. */
export const Field = ({ name, values, problems, words, text, options, most = 200 }: FieldProps) => {
  const { choices, fieldName, fields } = words;
  const told = { id: `f-${name}`, name, "aria-describedby": wrongId(name), "aria-invalid": problems[name] ? ("true" as const) : undefined };
  return (
    <label for={`f-${name}`}>
      <span>
        {text ?? fieldName(name)}
        {fields[name]?.hint && <small>{fields[name]?.hint}</small>}
      </span>
      {options ? (
        <select {...told}>
          {options.map((o) => (
            <option value={o} selected={(values[name] ?? "") === o}>
              {own(choices, `${name}:${o}`) ?? own(choices, o) ?? o}
            </option>
          ))}
        </select>
      ) : (
        <input {...told} value={values[name] ?? ""} maxlength={most} autocomplete="off" />
      )}
      <Wrong name={name} problems={problems} />
    </label>
  );
};
