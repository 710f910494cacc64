import { Wrong } from "../../parts/fields.tsx";
import { StepField } from "./field.tsx";
import { Frame, Send, Unpressed } from "./frame.tsx";
import type { StepProps } from "./state.ts";
import { STEP_FIELDS, UTILITY_FIELDS } from "./steps.ts";

/** The locate ticket: its number and days, how near a stake may come to a mark, and what each utility answered. */
export const TicketStep = (props: StepProps & { news: string | null }) => (
  <Frame step="ticket" {...props}>
    <form method="post" action={`/drafts/${props.draft}/ticket`}>
      <Unpressed go="stay" words={props.words} />
      {STEP_FIELDS.ticket.map(({ name }) => (
        <StepField name={name} {...props} />
      ))}
      <fieldset>
        <legend>{props.words.draft.utilities}</legend>
        <Wrong name="ticket.utilities" problems={props.problems} />
        <div class="beside">
          {UTILITY_FIELDS.map(({ kind, name }) => (
            <StepField name={name} text={props.words.utilityName(kind)} {...props} />
          ))}
        </div>
      </fieldset>
      <Send words={props.words} main={props.words.draft.on}>
        <button type="submit" name="go" value="unknown">
          {props.words.draft.noTicket}
        </button>
      </Send>
    </form>
  </Frame>
);
