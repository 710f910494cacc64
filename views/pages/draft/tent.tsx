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
import { TentOn } from "./tent-on.tsx";

const figures = STEP_FIELDS.tent.filter(({ keys }) => keys === "decimal");
const texts = STEP_FIELDS.tent.filter(({ keys }) => keys === undefined);

/** The plan of the tent as it is told so far; where there is none yet, the status says so. */
const Plan = ({ preview, words }: { preview: Preview; words: Words }) =>
  "plan" in preview ? <TentDrawing plan={preview.plan} words={words} /> : null;

const statusOf = (preview: Preview, words: Words): string =>
  "plan" in preview ? words.tents.drawn(glanceOf(preview.plan, words)) : words.draft.notDrawn;

/** What a preview changes on the page. Fields themselves are left alone. */
export const TentStepPreview = ({ problems, ...tent }: Pick<TentStepProps, "preview" | "drawn" | "ends" | "problems" | "words">) => (
  <>
    <hx-partial hx-target={`#${regions.tentStatus}`} hx-swap="innerHTML">
      {statusOf(tent.preview, tent.words)}
    </hx-partial>
    <hx-partial hx-target={`#${regions.tentPlan}`} hx-swap="innerHTML">
      <Plan {...tent} />
    </hx-partial>
    <hx-partial hx-target={`#${regions.tentOn}`} hx-swap="innerHTML">
      <TentOn {...tent} />
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

/** Which tent: one of the list, a size or an earlier job's. Once there is one, it comes before the list. */
export const TentStep = ({ preview, drawn, ends, offered, news, tents, earlier, newKey, ...props }: TentStepProps) => {
  const { draft, words, values } = props;
  const { draft: text } = words;
  const own = draft === null ? "/drafts" : `/drafts/${draft}/tent`;
  const begun = drawn !== null || figures.some(({ name }) => (values[name] ?? "") !== "");
  const list = (
    <>
      <h2>{begun ? text.anotherTent : text.fromList}</h2>
      {!begun && (
        <a class="button jump" href="#by-size">
          {text.toSize}
        </a>
      )}
      <Lines tents={tents} draft={draft} words={words} />
    </>
  );
  return (
    <Frame step="tent" {...props}>
      {news && <News {...news} />}
      {!begun && list}
      {!begun && <h2 id="by-size">{text.size}</h2>}
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
          <Send
            words={words}
            main={
              <div id={regions.tentOn} class="tent-on">
                <TentOn preview={preview} drawn={drawn} ends={ends} words={words} />
              </div>
            }
          />
        )}
        {texts.map(({ name }) => (
          <StepField name={name} {...props} />
        ))}
      </form>
      {begun && list}
      {earlier.length > 0 && <h2>{text.earlier}</h2>}
      {earlier.length > 0 && <p>{text.earlierTold}</p>}
      {earlier.map((job) => (
        <Copy {...job} newKey={newKey} />
      ))}
    </Frame>
  );
};

/** The firm's own first; of the examples it is said once that they are that. */
const Lines = ({ tents, draft, words }: { tents: readonly Tent[]; draft: string | null; words: Words }) => {
  const lines = (these: readonly Tent[]) => these.map((tent) => <Line {...tent} draft={draft} words={words} />);
  return (
    <div class="lines">
      {lines(tents.filter(({ version }) => version !== null))}
      <p>{words.draft.examples}</p>
      <div class="usual">{lines(tents.filter(({ version }) => version === null))}</div>
    </div>
  );
};

const Line = ({ id, name, version, plan, draft, words }: Tent & { draft: string | null; words: Words }) => (
  <a class="button job" href={draft === null ? `/drafts/new?tent=${id}` : `/drafts/${draft}/tent?tent=${id}`}>
    <b>{name}</b>
    {plan && version !== null && <span>{words.page.size(plan.widthFt, plan.lengthFt)}</span>}
  </a>
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
