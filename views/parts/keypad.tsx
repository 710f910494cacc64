import type { Child } from "hono/jsx";
import type { Unit } from "../../machines/install/checks/units.ts";
import type { Words } from "../text/words.ts";

/** What is put in with a pad: a number in a unit, a tape's reading, or a wind and its gust. */
export type PadUnit = Unit | "count" | "tape" | "wind";

const DELETE = "⌫";
/** The field that is not filled now: wind, or gust. */
const SWITCH = "⇄";
/**
 * Keys row by row; a gap is a key that its unit has no use for. Three fractions make every eighth, as each press adds one. Zero
 * takes two rows where nothing stands below it.
 */
const ROWS: Readonly<Record<PadUnit, readonly string[]>> = {
  count: ["7 8 9 ⌫", "4 5 6 0", "1 2 3"],
  lbf: ["7 8 9 ⌫", "4 5 6 0", "1 2 3"],
  turns: ["7 8 9 ⌫", "4 5 6 0", "1 2 3 ."],
  mph: ["7 8 9 ⌫", "4 5 6 0", "1 2 3 ."],
  in: ["7 8 9 ⌫ ½", "4 5 6 0 ¼", "1 2 3 . ⅛"],
  ft: ["7 8 9 ⌫ ½", "4 5 6 0 ¼", "1 2 3 ft ⅛"],
  tape: ["7 8 9 ⌫ ½", "4 5 6 0 ¼", "1 2 3 ft ⅛"],
  deg: ["7 8 9 ⌫ -", "4 5 6 0 .", "1 2 3"],
  wind: ["7 8 9 ⌫ ⇄", "4 5 6 0", "1 2 3"],
};

/**
 * Keys of our own for counts and measures: a phone's are too small for gloves. Without scripts the field does, and they are not
 * there. `children` stand beside them.
 */
export const Keypad = ({ unit, words: { guide }, children }: { unit: PadUnit; words: Words; children?: Child }) => {
  const rows = ROWS[unit].map((row) => row.split(" "));
  return (
    <div class={`keypad keys-${rows[0]!.length}`}>
      {rows.flatMap((row) =>
        row.map((key) => (
          <button
            type="button"
            class={key === "0" && rows[2]!.length < 4 ? "tall" : undefined}
            data-key={key}
            aria-label={nameOf(key, guide)}
          >
            {key === SWITCH ? guide.toGust : key === "ft" ? guide.feet : key}
          </button>
        )),
      )}
      {children}
    </div>
  );
};

const nameOf = (key: string, guide: Words["guide"]): string | undefined =>
  key === DELETE ? guide.backSpace : key === SWITCH ? guide.toGust : undefined;
