import type { TileInput } from "../../../../machines/install/checks/tile-input.ts";
import { Answer, fieldId, Press, type Props } from "./press.tsx";

/** A paper by its number: the one that is expected is one press. */
export const PaperNamed = ({
  tile: { expected, fields },
  ...props
}: Props & { tile: Extract<TileInput<never>, { input: "document" }> }) => {
  const { guide, page } = props.screen.words;
  return (
    <>
      {expected !== null && <Press {...props} fields={{ ...fields, value: expected }} text={guide.thisOne(expected)} class="main" />}
      <Answer {...props} fields={fields} class="paper-no">
        <label class="put-in" id={fieldId("paper", props.gate.id, props.gate.answered)}>
          {expected === null ? guide.paperNo : guide.another}
          <input name="value" required maxlength={80} autocomplete="off" />
        </label>
        <button type="submit" class={expected === null ? "main" : undefined}>
          {page.record}
        </button>
      </Answer>
    </>
  );
};

/** A paper that waits: the press of whoever has it before them as the second. Who showed it has nothing to press. */
export const PaperSeen = (props: Props) => {
  const { gate, screen } = props;
  if (!gate.shown || screen.me === gate.shown.by) return null;
  return <Press {...props} fields={gate.shown.fields} text={screen.words.guide.seenIt} class="main seen" />;
};
