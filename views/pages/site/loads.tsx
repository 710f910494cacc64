import type { LoadLine } from "../../../machines/loads/lines.ts";
import type { Screening } from "../../../machines/loads/screening.ts";
import type { Words } from "../../text/words.ts";
import { OneLine } from "./load-line.tsx";
import { Stations } from "./stations.tsx";

type Props = { readonly screening: Screening; readonly words: Words };

/**
 * A screening line by line: each formula in words, what went into it with its source, what came out, and what it leaves out. What all
 * stations share comes first; then what is worked out at each of them, told once, with the figures of every plate in one table.
 */
export const LoadLines = ({ screening, words, words: { loads } }: Props) => (
  <div class="load-lines">
    <Lines title={loads.shared} lines={screening.lines} {...{ screening, words }} />
    <Lines title={loads.capacity} lines={screening.capacity.lines} {...{ screening, words }} />
    <Stations screening={screening} words={words} />
    <h3>{loads.leftOutTitle}</h3>
    <ol class="left-out">
      {screening.leftOut.map((what) => (
        <li>{loads.leftOut(what)}</li>
      ))}
    </ol>
    <p>{loads.screeningOnly}</p>
  </div>
);

/** Lines of one thing, each with its figure; nothing where there are none. */
const Lines = ({ title, lines, screening, words }: Props & { readonly title: string; readonly lines: readonly LoadLine[] }) =>
  lines.length === 0 ? null : (
    <section>
      <h3>{title}</h3>
      <dl class="lines">
        {lines.map((line) => (
          <OneLine
            {...line}
            inputs={line.inputs.map((input) => ({ ...input, is: words.loads.amount(input.is, input.name) }))}
            allLeftOut={screening.leftOut}
            words={words}
          />
        ))}
      </dl>
    </section>
  );
