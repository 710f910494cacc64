import type { Weights, WeightsNotKnown } from "../../../machines/install/ballast.ts";
import type { TentPlan } from "../../../machines/tent/types.ts";
import type { Words } from "../../text/words.ts";
import { OneLine } from "../site/load-line.tsx";

type Props = {
  /** `null` where no weights are used, and then nothing is said of them. */
  readonly ballast: Weights | WeightsNotKnown | null;
  readonly plan: Pick<TentPlan, "plates">;
  readonly words: Words;
};

/** What the weights at the straps have to weigh, with formula, inputs, source and what is left out; or why nobody can say, and what to do. */
export const BallastSection = ({ ballast, plan, words, words: { anchors } }: Props) =>
  ballast && (
    <section class="ballast load-lines">
      <h2>{anchors.weights.title}</h2>
      {ballast.is === "known" ? <Known ballast={ballast} plan={plan} words={words} /> : <NotKnown ballast={ballast} words={words} />}
    </section>
  );

type KnownProps = Props & { readonly ballast: Weights };

function Known({ ballast, plan, words, words: { anchors, loads } }: KnownProps) {
  const { weights: text } = anchors;
  const { station, plate } = ballast.at;
  const leftOut = [...new Set(ballast.lines.flatMap((line) => line.leftOut))];
  return (
    <>
      <p>
        <b>{text.needed(ballast)}</b> {text.workedOut}
      </p>
      <p>{text.at(station, plate, plan.plates.filter((one) => one.station === station).length)}</p>
      <dl class="lines">
        {ballast.lines.map((line) => (
          <OneLine
            {...line}
            inputs={line.inputs.map((input) => ({ ...input, is: loads.amount(input.is, input.name) }))}
            allLeftOut={leftOut}
            words={words}
          />
        ))}
      </dl>
      <h3>{text.leftOut}</h3>
      <ol class="left-out">
        {leftOut.map((what) => (
          <li>{loads.leftOut(what)}</li>
        ))}
      </ol>
      <p>{text.opens}</p>
    </>
  );
}

/** Why nobody can say what weights have to weigh, and what to do; on the truck's page too. */
export const NotKnown = ({ ballast, words: { anchors } }: { readonly ballast: WeightsNotKnown; readonly words: Words }) => (
  <>
    <p>
      <b>{anchors.weights.notKnown}</b>
    </p>
    <ul>
      {ballast.reasons.map((reason) => (
        <li>{anchors.weights.why(reason)}</li>
      ))}
      {ballast.instead.map((what) => (
        <li>{anchors.weights.instead(what)}</li>
      ))}
    </ul>
  </>
);
