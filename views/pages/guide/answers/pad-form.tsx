import type { Child } from "hono/jsx";
import type { Fields } from "../../../../machines/install/checks/value-form.ts";
import { Keypad, type PadUnit } from "../../../parts/keypad.tsx";
import { Answer, fieldId, type Props } from "./press.tsx";

type Pad = Props & {
  readonly unit: PadUnit;
  readonly label: string;
  readonly fields: Fields;
  readonly of?: string;
  readonly children?: Child;
};

/** A number put in with our own keys. `children` answer besides, in the same row. */
export const PadForm = ({ unit, label, fields, of = "", children, ...props }: Pad) => (
  <div class={children ? "put-in-by three" : "put-in-by"}>
    <Answer {...props} fields={fields} class="pad number">
      <Keypad unit={unit} words={props.screen.words} />
      <label class="put-in" id={fieldId("pad", props.gate.id, of, props.gate.answered)}>
        {label}
        <input name="value" required maxlength={40} inputmode="decimal" autocomplete="off" />
      </label>
      <button type="submit" class="main">
        {props.screen.words.page.record}
      </button>
    </Answer>
    {children}
  </div>
);
