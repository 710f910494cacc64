import type { Child } from "hono/jsx";
import type { Value } from "../../../../machines/install/checks/registry.ts";
import type { Choice } from "../../../../machines/install/checks/tile-input.ts";
import type { Fields } from "../../../../machines/install/checks/value-form.ts";
import { SayForm, type Screen } from "../../../parts/say-form.tsx";
import type { GateState } from "../state.ts";

export type Props = { readonly screen: Screen; readonly gate: GateState };

/** An answer to a gate as a form. */
export const Answer = ({ screen, gate, fields, children, ...rest }: Props & { fields: Fields; class?: string; children?: Child }) => (
  <SayForm screen={screen} fields={{ type: "answer", gate: gate.id, ...fields }} {...rest}>
    {children}
  </SayForm>
);

/**
 * The id of a field: it names what is put in there and the answer that this follows. So a swap keeps what is typed while the
 * question stands, and replaces the field for another: a number typed for one never waits in the field of another. The form
 * around it stays, or what it is answered with would find nobody.
 */
export const fieldId = (...of: readonly (string | number)[]): string => `put-in-${of.join("-").replaceAll(/[^\w-]/g, "_")}`;

/** An answer that is one press. */
export const Press = ({ text, ...props }: Props & { fields: Fields; text: string; class?: string }) => (
  <Answer {...props}>
    <button type="submit">{text}</button>
  </Answer>
);

export const Choices = ({ choices, ...props }: Props & { choices: readonly Choice<Value>[] }) => (
  <>
    {choices.map(({ fields, value }) => (
      <Press {...props} fields={fields} text={props.screen.words.valueText(value)} class="main choice" />
    ))}
  </>
);

/** That nobody knows; where lengths are read, that they are read again. */
export const Unknown = (props: Props) => {
  const { guide, lengths } = props.screen.words;
  return (
    <Press
      {...props}
      fields={{ kind: "unknown" }}
      text={props.gate.tile.input === "readings" ? lengths.afresh : guide.unknown}
      class="unknown"
    />
  );
};

/** Whether a gate takes that nobody knows. What is read off a paper or off a meter is not known by leaving it. */
export const takesUnknown = ({ tile: { input } }: GateState): boolean => !["document", "facts", "site", "wind", "none"].includes(input);
