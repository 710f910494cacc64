import { StepField } from "./field.tsx";
import { Frame, Send, Unpressed } from "./frame.tsx";
import type { StepProps } from "./state.ts";
import { STEP_FIELDS } from "./steps.ts";

const figures = STEP_FIELDS.sheet.filter(({ keys }) => keys === "decimal");
const texts = STEP_FIELDS.sheet.filter(({ keys }) => keys !== "decimal");

/** The tent's paper, and the few figures of it that gates need. */
export const SheetStep = (props: StepProps & { news: string | null }) => (
  <Frame step="sheet" {...props}>
    <form method="post" action={`/drafts/${props.draft}/sheet`}>
      <Unpressed go="stay" words={props.words} />
      {texts.map(({ name }) => (
        <StepField name={name} {...props} />
      ))}
      <div class="pairs">
        {figures.map(({ name }) => (
          <StepField name={name} {...props} />
        ))}
      </div>
      <Send words={props.words} main={props.words.draft.on}>
        <button type="submit" name="go" value="unknown">
          {props.words.draft.noSheet}
        </button>
        <button type="submit" name="go" value="anchors">
          {props.words.anchors.link}
        </button>
      </Send>
    </form>
  </Frame>
);
