import { UTILITIES } from "../../../machines/install/utilities.ts";
import { Wrong } from "../../parts/fields.tsx";
import { StepField } from "./field.tsx";
import { Frame, Send } from "./frame.tsx";
import type { StepProps } from "./state.ts";

/** What a utility can have answered. */
export const ANSWERS = ["notOnTicket", "marked", "clear"];

/** The locate ticket: its number and days, how near a stake may come to a mark, and what each utility answered. */
export const TicketStep = (props: StepProps & { news: string | null }) => (
  <Frame step="ticket" {...props}>
    <form method="post" action={`/drafts/${props.draft}/ticket`}>
      <StepField name="ticket.number" {...props} />
      <StepField name="ticket.validFrom" keys="date" device="today" {...props} />
      <StepField name="ticket.validTo" keys="date" {...props} />
      <StepField name="ticket.toleranceIn" keys="decimal" {...props} />
      <fieldset>
        <legend>{props.words.draft.utilities}</legend>
        <Wrong name="ticket.utilities" problems={props.problems} />
        <div class="beside">
          {UTILITIES.map((kind) => (
            <StepField name={`ticket.utilities.${kind}`} text={props.words.utilityName(kind)} options={ANSWERS} {...props} />
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
