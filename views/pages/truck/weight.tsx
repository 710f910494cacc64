import type { Words } from "../../text/words.ts";
import { NotKnown } from "../anchors/ballast.tsx";
import type { TruckState } from "./state.ts";

type Props = { readonly state: Pick<TruckState, "lines" | "weight" | "ballast">; readonly words: Words };

/** What the truck carries in pounds, as far as that is known; and where weights are used, what they have to weigh or why nobody can say. */
export const TruckWeight = ({ state, words, words: { truck, anchors } }: Props) => {
  const { lines, ballast } = state;
  const weights = lines.find((line) => line.workedOut);
  return (
    <>
      <p class="weight">{truck.weight(state.weight, lines)}</p>
      {ballast?.is === "known" && (
        <p class="ballast">
          <b>{anchors.weights.needed(weights?.lb != null ? { eachLb: ballast.eachLb, straps: weights.count, lb: weights.lb } : ballast)}</b>{" "}
          {anchors.weights.workedOut}
        </p>
      )}
      {ballast?.is === "notKnown" && (
        <div class="ballast">
          <NotKnown ballast={ballast} words={words} />
        </div>
      )}
    </>
  );
};
