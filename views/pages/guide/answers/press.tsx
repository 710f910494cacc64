import type { Child } from "hono/jsx";
import type { Value } from "../../../../machines/install/checks/registry.ts";
import type { Choice } from "../../../../machines/install/checks/tile-input.ts";
import type { Fields } from "../../../../machines/install/checks/value-form.ts";
import { SayForm, type Screen } from "../../../parts/say-form.tsx";
import type { GateState } from "../state.ts";

export type Props = { readonly screen: Screen; readonly gate: GateState };

/** An answer to a gate as a form. */
export const Answer = ({
  screen,
  gate,
  fields,
  children,
  ...rest
}: Props & { fields: Fields; class?: string; id?: string; children?: Child }) => (
  <SayForm screen={screen} fields={{ type: "answer", gate: gate.id, ...fields }} {...rest}>
    {children}
  </SayForm>
);

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

/** That nobody knows; where lengths are read, that they are read anew. */
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
export const takesUnknown = ({ tile: { input } }: GateState): boolean => !["document", "wind", "none"].includes(input);
