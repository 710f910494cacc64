import type { Child } from "hono/jsx";
import { JobScreen, Way } from "../../parts/job-screen.tsx";
import { SayForm, type Screen } from "../../parts/say-form.tsx";
import { TextField } from "../../parts/text-field.tsx";
import { isOfAnchors } from "../guide/anchors.ts";
import { Answer, type Props, takesUnknown, Unknown } from "../guide/answers/press.tsx";
import { type Item, itemsOf, pickOf } from "../guide/asked.ts";

/** What a paper, or a reason, is told in at most. */
const MAX_PAPER = 80;

/** All ways to answer what is asked now: the list it asks through, that nobody knows, a paper instead, or left with a reason. */
export const AnswersPage = (screen: Screen) => {
  const { guide, words } = screen;
  const { gate } = guide;
  return (
    <JobScreen screen={screen} title={gate?.ask ?? words.guide.closed} class="ways-to-answer">
      {gate && (
        <>
          <div class="tiles">
            {itemsOf(gate, words).map((item) => (
              <a class="button item" href={`/jobs/${guide.job}?pick=${pickOf(gate, item.name)}`}>
                <Told item={item} words={words} />
              </a>
            ))}
          </div>
          {takesUnknown(gate) && <Unknown screen={screen} gate={gate} />}
          {isOfAnchors(gate.id) && <Way screen={screen} to="anchors" text={words.anchors.title} />}
          {gate.paper !== null && <PaperInstead screen={screen} gate={gate} />}
          {!gate.hard && <Left screen={screen} gate={gate} />}
          {itemsOf(gate, words).length === 0 && !takesUnknown(gate) && gate.paper === null && gate.hard && <p>{words.guide.noOther}</p>}
        </>
      )}
    </JobScreen>
  );
};

const Told = ({ item: { ask, given }, words: { guide } }: { item: Item; words: Screen["words"] }) => (
  <span>{given === null ? ask : guide.given(ask, given)}</span>
);

const Folded = ({ text, children }: { text: string; children: Child }) => (
  <details>
    <summary>{text}</summary>
    {children}
  </details>
);

const PaperInstead = (props: Props) => {
  const { guide, page } = props.screen.words;
  return (
    <Folded text={guide.paper}>
      <Answer {...props} fields={{ kind: "paper" }} class="paper-instead">
        <TextField name="by" label={guide.paperBy} max={MAX_PAPER} />
        <TextField name="document" label={guide.paperNo} max={MAX_PAPER} />
        <label>
          {guide.paperDate}
          <input type="date" name="dated" required />
        </label>
        <button type="submit">{page.record}</button>
      </Answer>
    </Folded>
  );
};

const Left = ({ screen, gate }: Props) => {
  const { guide, page } = screen.words;
  return (
    <Folded text={guide.leave}>
      <SayForm screen={screen} fields={{ type: "waive", gate: gate.id }} class="left">
        <TextField name="because" label={page.because} max={MAX_PAPER} />
        <button type="submit">{guide.leave}</button>
      </SayForm>
    </Folded>
  );
};
