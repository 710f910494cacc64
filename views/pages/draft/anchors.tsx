import type { Filled } from "../../parts/fields.tsx";
import { Page } from "../../parts/page.tsx";
import { AnchorFields } from "../anchors/form.tsx";

type Props = Filled & {
  readonly draft: string;
  /** What the draft is called. */
  readonly title: string;
  readonly message: string | null;
};

/** What the anchors of a job are screened by, before it is opened: the same fields as on the job's own page. */
export const DraftAnchorsPage = ({ draft, title, message, ...filled }: Props) => {
  const { words } = filled;
  const { anchors: text } = words;
  return (
    <Page words={words} title={text.title} styles="anchors">
      <main class="draft anchors">
        <h1>{text.title}</h1>
        <p>{title}</p>
        {message !== null && (
          <p class="alarm" role="alert">
            {message}
          </p>
        )}
        <p>{text.introDraft}</p>
        <form method="post" action={`/drafts/${draft}/anchors`}>
          <AnchorFields {...filled} />
          <button type="submit" class="main">
            {text.keep}
          </button>
        </form>
        <a class="button" href={`/drafts/${draft}/sheet`}>
          {text.toDraft}
        </a>
      </main>
    </Page>
  );
};
