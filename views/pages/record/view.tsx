import type { Child } from "hono/jsx";
import { FLAGS, type Flag } from "../../../machines/record/findings.ts";
import { RecordDigest } from "../../parts/digests.tsx";
import { Marks, Times } from "../../parts/findings.tsx";
import type { HurtState } from "../../parts/hurt-state.ts";
import { OutAndBack } from "../../parts/out-and-back.tsx";
import { Page } from "../../parts/page.tsx";
import type { Words } from "../../text/words.ts";
import { Picture } from "../photos/shot.tsx";
import { photoPath } from "../photos/state.ts";
import { Papers } from "./papers-shown.tsx";
import type { CallRun, PhaseRun, RecordLine, RecordState } from "./state.ts";

/** What was asked to be seen of a record: marks to show, all entries where there are none, and names that are no marks. */
export type Show = { readonly marks: readonly Flag[]; readonly unknown: readonly string[] };
type Props = { readonly state: RecordState; readonly show: Show; readonly shown: number; readonly words: Words; readonly children?: Child };
type Framed = Props & { readonly hurt: HurtState | null };

/** The frame of a record: what the job is, whether it holds, what to look for. The phases go inside, one after another. */
export const RecordPage = ({ state, show, shown, hurt, words, words: { markName, record }, children }: Framed) => (
  <Page
    words={words}
    title={record.of(state.title)}
    where={{ on: "record", job: { id: state.job, title: state.title } }}
    styles="record"
    hurt={hurt}
    follows={state.job}
    hurtWay={state.job}
  >
    <main class="record" hx-ignore>
      <div class="about">
        <h1>{state.title}</h1>
        <p>{state.size}</p>
        {state.fold.rehearsal && <p class="alarm">{record.rehearsal}</p>}
        <p class={state.problem === null ? "verdict" : "verdict broken"} id="verdict">
          {state.problem === null ? record.holds(state.entries) : record.breaks(state.problem, state.entries)}
        </p>
        <RecordDigest record={{ no: state.entries, hash: state.tip }} words={words} />
        <Papers papers={state.papers} words={words} />
        <Facts state={state} words={words} />
        <Filter state={state} show={show} words={words} />
      </div>
      <div class="entries">
        {show.unknown.length > 0 && <p class="alarm">{record.noSuch(show.unknown.join(", ").slice(0, 80), FLAGS)}</p>}
        {show.marks.length > 0 && (
          <p class="showing">
            {shown === 0 ? record.none : record.showing(shown, state.entries, show.marks.map((mark) => markName(mark)).join(", "))}
          </p>
        )}
        {children}
        <RecordDigest record={{ no: state.entries, hash: state.tip }} words={words} />
        <p class="small">{words.proof.writeDown}</p>
      </div>
    </main>
  </Page>
);

const Facts = ({ state, words, words: { markName, page, record } }: { state: RecordState; words: Words }) => (
  <>
    <dl class="facts">
      <Fact name={record.opened}>{state.opened.local}</Fact>
      <Fact name={record.lastEntry}>{state.last.local}</Fact>
      <Fact name={record.crew}>{state.crew.map((p) => record.person(p.name, p.roleName)).join("; ")}</Fact>
      {state.phones.length > 0 && (
        <Fact name={record.phones}>{state.phones.map((p) => record.firstUsed(p.label, p.firstBy)).join("; ")}</Fact>
      )}
      <Fact name={record.lastHash}>
        <code>{state.tip}</code>
        <small>{record.compare}</small>
      </Fact>
    </dl>
    <p class="on-paper">{FLAGS.map((mark) => record.count(markName(mark), state.fold.counts[mark])).join("; ")}</p>
    <Times times={state.times} words={words} />
    <OutAndBack kit={state.kit} words={words} />
    <p class="small">{`${record.zone(state.zone)} ${record.spoken}`}</p>
    <nav class="ways">
      <a class="button" href={`/jobs/${state.job}`}>
        {page.guide}
      </a>
      <a class="button" href={`/jobs/${state.job}/report`}>
        {words.report.link}
      </a>
      <a class="button" href={`/jobs/${state.job}/proof`}>
        {words.proof.link}
      </a>
      <a class="button" href={`/jobs/${state.job}/check`}>
        {words.proof.checkTitle}
      </a>
      <a class="button" href="/findings">
        {record.findings}
      </a>
      <a class="button" href={`/jobs/${state.job}/record.csv`}>
        {record.asCsv}
      </a>
      <a class="button" href={`/jobs/${state.job}/record.json`}>
        {record.asJson}
      </a>
    </nav>
  </>
);
const Fact = ({ name, children }: { name: string; children: Child }) => (
  <>
    <dt>{name}</dt>
    <dd>{children}</dd>
  </>
);

const Filter = ({ state, show, words: { markName, record } }: Pick<Props, "state" | "show" | "words">) => (
  <form method="get" class="filter">
    <fieldset>
      <legend>{record.toldApart}</legend>
      {FLAGS.map((mark) => (
        <label class={`mark ${mark}`}>
          <input type="checkbox" name="show" value={mark} checked={show.marks.includes(mark)} />
          <span>{markName(mark)}</span>
          <b class="number">{state.fold.counts[mark]}</b>
        </label>
      ))}
      <button type="submit">{record.show}</button>
      <a class="button" href={`/jobs/${state.job}/record`}>
        {record.showAll}
      </a>
    </fieldset>
  </form>
);

/** The frame of a phase; its calls go inside. */
export const PhaseSection = ({ phase, children }: { phase: PhaseRun; children?: Child }) => (
  <section class="phase">
    <h2>{phase.name}</h2>
    {children}
  </section>
);

/** One call and all that was said there. */
export const CallBlock = ({ call, job, words }: { call: CallRun; job: string; words: Words }) => (
  <article>
    <h3>{call.say}</h3>
    {call.lines.length === 0 ? (
      <p class="small">{words.record.stillHere}</p>
    ) : (
      <ol>{call.lines.map((line) => Line({ line, job, words }))}</ol>
    )}
  </article>
);

const Line = ({ line, job, words, words: { record } }: { line: RecordLine; job: string; words: Words }) => {
  const { no, time, heard, taken, reply, photo, holdsPlan, flags } = line;
  return (
    <li id={`e${no}`} class={flags.length > 0 ? `marked ${flags.join(" ")}` : undefined}>
      <p class="by">
        <b class="no">{no}</b>
        <time datetime={time.utc}>{time.local}</time>
        {line.who !== null && ` ${saidBy(line, words)}`}
      </p>
      <p class="said">{heard === null ? taken : `${record.heard(heard)} ${record.taken(taken)}`}</p>
      {reply !== "" && <p class="told">{reply}</p>}
      {photo && (
        <figure class="photo">
          <a href={photoPath(job, photo.hash)}>
            <Picture job={job} photo={{ no, ...photo }} words={words} />
          </a>
          <figcaption>
            {photo.of !== null && <span>{photo.of}</span>}
            <span>
              {record.photoHash} <code>{photo.hash}</code>
            </span>
          </figcaption>
        </figure>
      )}
      {holdsPlan && (
        <p>
          <a class="button" href={`/jobs/${job}/layout?entry=${no}`}>
            {record.planOf(no)}
          </a>
        </p>
      )}
      <Marks marks={flags} words={words} />
    </li>
  );
};

const saidBy = ({ who, roleName, phone, source }: RecordLine, { record, sourceName }: Words): string =>
  [record.person(who!, roleName!), record.phoneOf(phone!.label, phone!.firstBy), sourceName(source!)].join(", ");
