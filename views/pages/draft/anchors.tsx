import { AnchorFields } from "../anchors/form.tsx";
import { DraftPart, type PartProps } from "./part.tsx";

/** What the anchors of a job are screened by, before it is opened. */
export const DraftAnchorsPage = ({ draft, title, message, ...filled }: PartProps) => {
  const { anchors } = filled.words;
  const text = { ...anchors, intro: anchors.introDraft };
  return (
    <DraftPart part="anchors" step="sheet" text={text} draft={draft} title={title} message={message} words={filled.words}>
      <AnchorFields {...filled} />
    </DraftPart>
  );
};
