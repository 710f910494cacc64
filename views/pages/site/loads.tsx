import type { LoadLine } from "../../../machines/loads/lines.ts";
import type { Screening } from "../../../machines/loads/screening.ts";
import type { Words } from "../../text/words.ts";

type Props = { readonly screening: Screening; readonly words: Words };

/**
 * A screening line by line: each formula in words, what went into it with its source, what came out, and what all of it leaves out. What
 * all stations share comes first, then each station with its plates.
 */
export const LoadLines = ({ screening, words, words: { loads } }: Props) => (
  <div class="load-lines">
    <Lines title={loads.shared} lines={screening.lines} words={words} />
    <Lines title={loads.capacity} lines={screening.capacity.lines} words={words} />
    {byVerdict(screening).map(([verdict, stations]) => (
      <details>
        <summary>
          {loads.verdict(verdict)}: {stations.map(({ station }) => station).join(", ")}
        </summary>
        {stations.map(({ station, lines, plates }) => (
          <>
            <Lines title={station} lines={lines} words={words} />
            {plates.map((plate) => (
              <Lines title={loads.station(station, plate.plate, plates.length)} lines={plate.lines} words={words} />
            ))}
          </>
        ))}
      </details>
    ))}
    <h3>{loads.leftOutTitle}</h3>
    <ul>
      {screening.leftOut.map((what) => (
        <li>{loads.leftOut(what)}</li>
      ))}
    </ul>
    <p>{loads.screeningOnly}</p>
  </div>
);

/** Stations that come to the same stand together, what is short first. */
const byVerdict = ({ stations }: Screening) =>
  (["short", "notKnown", "notShort"] as const)
    .map((verdict) => [verdict, stations.filter((s) => s.verdict === verdict)] as const)
    .filter(([, those]) => those.length > 0);

type LinesProps = { readonly title: string; readonly lines: readonly LoadLine[]; readonly words: Words };

/** Lines of one thing; nothing where there are none. */
export const Lines = ({ title, lines, words: { loads } }: LinesProps) =>
  lines.length === 0 ? null : (
    <section>
      <h3>{title}</h3>
      <dl class="lines">
        {lines.map(({ formula, inputs, result, source }) => (
          <div>
            <dt>
              {loads.formula(formula).name}: <b>{loads.amount(result)}</b>
            </dt>
            <dd>
              {loads.formula(formula).how}
              {inputs.length > 0 && (
                <span class="from">
                  {inputs
                    .map(({ name, is, source: from }) => `${loads.input(name)} ${loads.amount(is)} (${loads.source(from)})`)
                    .join("; ")}
                </span>
              )}
              <span class="source">{loads.sourceIs(loads.source(source))}</span>
            </dd>
          </div>
        ))}
      </dl>
    </section>
  );
