import { StepField } from "./field.tsx";
import { Frame, Send } from "./frame.tsx";
import type { StepProps } from "./state.ts";

/** The tent's paper, and the few figures of it that gates need. */
export const SheetStep = (props: StepProps & { news: string | null }) => (
  <Frame step="sheet" {...props}>
    <form method="post" action={`/drafts/${props.draft}/sheet`}>
      <StepField name="sheet.document" {...props} />
      <StepField name="sheet.stakeKind" {...props} />
      <div class="pairs">
        <StepField name="sheet.stakeDiameterIn" keys="decimal" {...props} />
        <StepField name="sheet.stakeLengthIn" keys="decimal" {...props} />
        <StepField name="sheet.embedmentIn" keys="decimal" {...props} />
        <StepField name="sheet.raiseGustMph" keys="decimal" {...props} />
      </div>
      <Send words={props.words} main={props.words.draft.on}>
        <button type="submit" name="go" value="unknown">
          {props.words.draft.noSheet}
        </button>
      </Send>
    </form>
  </Frame>
);
