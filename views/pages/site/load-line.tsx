import type { LoadFormula, LoadInputName, LoadLeftOut, LoadLine } from "../../../machines/loads/lines.ts";
import type { Words } from "../../text/words.ts";

type Props = {
  readonly formula: LoadFormula;
  /** What came out, where it is one figure. */
  readonly result?: LoadLine["result"];
  readonly source: LoadLine["source"];
  /** What goes in, each with its figure or where that stands. */
  readonly inputs: readonly { readonly name: LoadInputName; readonly is: string; readonly source: LoadLine["source"] }[];
  readonly leftOut: readonly LoadLeftOut[];
  /** All that the screening leaves out, in the order that it is numbered in. */
  readonly allLeftOut: readonly LoadLeftOut[];
  readonly words: Words;
};

/** A line of a screening, or a kind of lines: how it is worked out, what goes in, each with its source, and what it leaves out by number. */
export const OneLine = ({ formula, result, source, inputs, leftOut, allLeftOut, words: { loads } }: Props) => {
  const { name, how } = loads.formula(formula);
  const numbers = leftOut.map((what) => allLeftOut.indexOf(what) + 1).sort((a, b) => a - b);
  const from = inputs.map(({ name: input, is, source: its }) => loads.goesIn(loads.input(input), is, loads.source(its)));
  return (
    <div>
      <dt>
        {name}
        {result && (
          <>
            : <b>{loads.amount(result, formula)}</b>
          </>
        )}
      </dt>
      <dd>
        {how}
        {from.length > 0 && <span class="from">{from.join("; ")}</span>}
        <span class="source">
          {loads.sourceIs(loads.source(source))}
          {numbers.length > 0 && loads.leavesOut(numbers)}
        </span>
      </dd>
    </div>
  );
};
