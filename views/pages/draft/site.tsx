import { StepField } from "./field.tsx";
import { Frame, Send } from "./frame.tsx";
import type { StepProps } from "./state.ts";

/** Where help is sent, where the crew gathers and shelters, and what the ground is. */
export const SiteStep = (props: StepProps & { news: string | null }) => (
  <Frame step="site" {...props}>
    <form method="post" action={`/drafts/${props.draft}/site`}>
      <StepField name="site.address" {...props} />
      <StepField name="site.rallyPoint" {...props} />
      <StepField name="site.stormShelter" {...props} />
      <StepField name="site.firstAid" {...props} />
      <StepField name="site.soil" {...props} />
      <StepField name="zone" device="zone" {...props} />
      <Send words={props.words} main={props.words.draft.on} />
    </form>
  </Frame>
);
