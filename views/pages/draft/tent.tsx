import { TentDrawing } from "../../drawing/tent.tsx";
import { glanceOf } from "../../parts/tent-facts.ts";
import type { Preview } from "../../parts/tent-part.tsx";
import { regions, wrongId } from "../../regions.ts";
import type { Words } from "../../text/words.ts";
import type { Tent } from "../tents/state.ts";
import { StepField } from "./field.tsx";
import { Frame, Send, Unpressed } from "./frame.tsx";
import type { Earlier, TentNews, TentStepProps } from "./state.ts";
import { STEP_FIELDS } from "./steps.ts";

const figures = STEP_FIELDS.tent.filter(({ keys }) => keys === "decimal");
const texts = STEP_FIELDS.tent.filter(({ keys }) => keys === undefined);

/** The plan of the tent as it is told so far; where there is none yet, the status says so. */
const Plan = ({ preview, words }: { preview: Preview; words: Words }) =>
  "plan" in preview ? <TentDrawing plan={preview.plan} words={words} /> : null;

const statusOf = (preview: Preview, words: Words): string =>
  "plan" in preview ? words.tents.drawn(glanceOf(preview.plan, words)) : words.draft.notDrawn;

/** What a preview changes on the page. Fields themselves are left alone. */
export const TentStepPreview = ({ preview, problems, words }: Pick<TentStepProps, "preview" | "problems" | "words">) => (
  <>
    <hx-partial hx-target={`#${regions.tentStatus}`} hx-swap="innerHTML">
      {statusOf(preview, words)}
    </hx-partial>
    <hx-partial hx-target={`#${regions.tentPlan}`} hx-swap="innerHTML">
      <Plan preview={preview} words={words} />
    </hx-partial>
    {STEP_FIELDS.tent.map(({ name }) => (
      <hx-partial hx-target={`#${wrongId(name)}`} hx-swap="innerHTML">
        {problems[name] ?? ""}
      </hx-partial>
    ))}
  </>
);

const News = ({ told, rows }: TentNews) => (
  <div class="alarm" role="alert">
    <p>{told}</p>
    <ul>
      {rows.map((row) => (
        <li>{row}</li>
      ))}
    </ul>
  </div>
);

/** Which tent: one that is drawn already, a size, one of the list, or an earlier job's. */
export const TentStep = ({ preview, offered, news, tents, earlier, newKey, ...props }: TentStepProps) => {
  const { draft, words } = props;
  const { draft: text } = words;
  const drawn = "plan" in preview;
  const own = draft === null ? "/drafts" : `/drafts/${draft}/tent`;
  return (
    <Frame step="tent" {...props}>
      {news && <News {...news} />}
      <form method="post" action={own}>
        <Unpressed go={news ? "stay" : "look"} words={words} />
        {draft === null && <input type="hidden" name="key" value={newKey()} />}
        {offered && <input type="hidden" name="tent" value={offered.id} />}
        {offered && <input type="hidden" name="digest" value={offered.digest} />}
        <div
          class="tent-part"
          hx-post={draft === null ? "/drafts/preview" : `/drafts/preview?draft=${draft}`}
          hx-trigger="input delay:350ms"
          hx-swap="none"
          hx-sync="this:replace"
        >
          <div>
            {!drawn && <p>{text.size}</p>}
            <div class="thirds">
              {figures.map(({ name }) => (
                <StepField name={name} {...props} />
              ))}
            </div>
          </div>
          <section class="preview">
            <div id={regions.tentPlan}>
              <Plan preview={preview} words={words} />
            </div>
            <p id={regions.tentStatus} role="status">
              {statusOf(preview, words)}
            </p>
            <p class="old">{words.tents.old}</p>
            <noscript>
              <button type="submit" name="go" value="look">
                {text.draw}
              </button>
            </noscript>
          </section>
        </div>
        {news ? (
          <button type="submit" class="main" name="go" value={news.gone ? "keep" : "on"}>
            {news.gone ? text.keepDrawn : text.takeNow}
          </button>
        ) : (
          <Send words={words} main={text.on} />
        )}
        {texts.map(({ name }) => (
          <StepField name={name} {...props} />
        ))}
      </form>
      <h2>{drawn ? text.anotherTent : text.fromList}</h2>
      <Lines tents={tents} draft={draft} words={words} />
      {earlier.length > 0 && <h2>{text.earlier}</h2>}
      {earlier.length > 0 && <p>{text.earlierTold}</p>}
      {earlier.map((job) => (
        <Copy {...job} newKey={newKey} />
      ))}
    </Frame>
  );
};

const Lines = ({ tents, draft, words }: { tents: readonly Tent[]; draft: string | null; words: Words }) => (
  <div class="lines">
    {tents.map(({ id, name, version, plan }) => (
      <a class="button job" href={draft === null ? `/drafts/new?tent=${id}` : `/drafts/${draft}/tent?tent=${id}`}>
        <b>{name}</b>
        {version === null && <i>{words.tents.example}</i>}
        {plan && version !== null && <span>{words.page.size(plan.widthFt, plan.lengthFt)}</span>}
      </a>
    ))}
  </div>
);

const Copy = ({ id, title, size, newKey }: Earlier & Pick<TentStepProps, "newKey">) => (
  <form method="post" action="/drafts">
    <input type="hidden" name="copy" value={id} />
    <input type="hidden" name="key" value={newKey()} />
    <button type="submit" class="job">
      <b>{title}</b>
      <span>{size}</span>
    </button>
  </form>
);
