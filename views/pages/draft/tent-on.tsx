import type { Words } from "../../text/words.ts";
import type { EndsAsked, TentStepProps } from "./state.ts";

type Props = Pick<TentStepProps, "preview" | "drawn" | "ends"> & { words: Words };

/** The way on from a tent: one press or, where nobody said yet how its ends are cut, one for either way. */
export const TentOn = ({ preview, drawn, ends, words: { draft: text } }: Props) => (
  <>
    {drawn !== null && <input type="hidden" name="drawn" value={drawn} />}
    {ends && "plan" in preview ? (
      <>
        <p class="asks">{text.whichEnds}</p>
        <div class="pair">
          <Ends is="split" name={text.splitEnds} ends={ends} pieces={text.pieces} />
          <Ends is="whole" name={text.wholeEnds} ends={ends} pieces={text.pieces} />
        </div>
        <p>{text.assumed(preview.plan.pieces.length, preview.plan.spec.quarterRings)}</p>
      </>
    ) : (
      <button type="submit" class="main" name="go" value="on">
        {text.on}
      </button>
    )}
  </>
);

const Ends = ({ is, name, ends, pieces }: { is: keyof EndsAsked; name: string; ends: EndsAsked; pieces: (n: number) => string }) => (
  <button type="submit" class="main" name="ends" value={is}>
    <b>{name}</b>
    <small>{pieces(ends[is])}</small>
  </button>
);
