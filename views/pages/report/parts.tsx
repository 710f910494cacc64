import type { Child } from "hono/jsx";
import { Times } from "../../parts/findings.tsx";
import { OutAndBack } from "../../parts/out-and-back.tsx";
import type { Words } from "../../text/words.ts";
import { Shot } from "../photos/shot.tsx";
import type { AnswerShown, FindingShown, GateGroup, GateShown, ReadingShown, ReportState } from "./state.ts";

type Framed = { readonly words: Words; readonly children?: Child };

/** What was asked and answered: the phases go inside, one after another. */
export const Gates = ({ ahead, words: { report }, children }: Framed & Pick<ReportState, "ahead">) => (
  <section>
    <h2>{report.gates}</h2>
    <p class="small">{report.gatesTold}</p>
    {children}
    {ahead.length > 0 && <p>{report.ahead(ahead)}</p>}
  </section>
);

/** The gates of a phase. On a phone each is a card, and each cell names itself. */
export const GateTable = ({ group: { name, gates }, words }: { group: GateGroup; words: Words }) => {
  const { columns } = words.report;
  return (
    <table class="gates">
      <caption>{name}</caption>
      <thead>
        <tr>
          {Object.values(columns).map((column) => (
            <th scope="col">{column}</th>
          ))}
        </tr>
      </thead>
      {gates.map((gate) => (
        <Gate gate={gate} words={words} />
      ))}
    </table>
  );
};

/** One row for each answer. */
const Gate = ({ gate, words, words: { report } }: { gate: GateShown; words: Words }) => {
  const { say, ask, good, hard, second, answers } = gate;
  const cells: readonly Child[] =
    answers.length > 0
      ? answers.map((answer, i) => <Answered answer={answer} last={i === answers.length - 1} words={words} />)
      : [<NotAnswered words={words} />];
  return (
    <tbody class="gate">
      {cells.map((cell, i) => (
        <tr>
          {i === 0 && (
            <>
              <th scope="rowgroup" rowspan={cells.length}>
                {say} {ask !== null && <span>{ask}</span>} {second && <small>{report.second}</small>}{" "}
                {!hard && <small>{report.soft}</small>}
              </th>
              <td class="good" rowspan={cells.length} data-name={report.columns.good}>
                {good}
              </td>
            </>
          )}
          {cell}
        </tr>
      ))}
    </tbody>
  );
};

const NotAnswered = ({ words: { report } }: { words: Words }) => (
  <>
    <td data-name={report.columns.answer}>{report.noAnswer}</td>
    <td data-name={report.columns.who} />
  </>
);

const Answered = ({ answer, last, words: { markName, report } }: { answer: AnswerShown; last: boolean; words: Words }) => (
  <>
    <td data-name={report.columns.answer}>
      {last ? <b>{answer.text}</b> : answer.text}
      {answer.outOfLimit && <strong class="mark outOfLimit">{markName("outOfLimit")}</strong>}
      {answer.paper && <small>{answer.seen ? report.seen(report.by(answer.seen)) : report.notSeen}</small>}
    </td>
    <td data-name={report.columns.who}>{report.by(answer)}</td>
  </>
);

/** Weather readings; their lines go inside, where there are any. */
export const Readings = ({ words: { report }, children }: Framed) => (
  <section>
    <h2>{report.readings}</h2>
    {children === undefined ? <p>{report.noReadings}</p> : <ul class="readings">{children}</ul>}
  </section>
);
export const ReadingLine = ({ reading, words: { report } }: { reading: ReadingShown; words: Words }) => (
  <li>
    <b>{reading.text}</b>
    {reading.refused && <i>{` (${report.refused})`}</i>} <span>{report.by(reading)}</span>
  </li>
);

/** How long each phase took, what of the kit went out and came back, and how often each mark stands in the record. */
export const Sums = ({ state, words, words: { record, report } }: { state: ReportState; words: Words }) => (
  <section>
    <Times times={state.times} words={words} />
    <OutAndBack kit={state.kit} words={words} />
    <h2>{report.findings}</h2>
    <p>{state.counts.map(({ name, count }) => record.count(name, count)).join("; ")}</p>
    {state.findings.length === 0 && <p>{report.noFindings}</p>}
  </section>
);
/** The list of what a manager should look at; its lines go inside. */
export const Findings = ({ children }: { children?: Child }) => <ol class="found">{children}</ol>;
export const FindingLine = ({ finding }: { finding: FindingShown }) => (
  <li>
    <b>{finding.title}</b> <span>{finding.what}</span> <small>{finding.entries}</small>
  </li>
);

/** The photos of the job, in the order of its record. Nothing where none was taken. */
export const Photos = ({ state: { job, photos }, words }: { state: ReportState; words: Words }) =>
  photos.length === 0 ? null : (
    <section class="report-photos">
      <h2>{words.photos.title}</h2>
      {photos.map((photo) => (
        <Shot job={job} photo={photo} words={words} />
      ))}
    </section>
  );
