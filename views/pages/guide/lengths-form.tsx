import type { Check } from "../../../machines/install/gates.ts";
import { LENGTHS, type LengthName, lengthFt } from "../../../machines/site/lengths.ts";
import { squared, toleranceIn } from "../../../machines/site/squaring.ts";
import { SayForm, type Screen } from "../../parts/say-form.tsx";
import type { Words } from "../../text/words.ts";
import type { GateState } from "./state.ts";

type Square = Extract<Check, { kind: "square" }>;
type Props = { screen: Screen; gate: GateState; asks: Square };

/**
 * The lengths between the corner marks: what is wanted and read, and one field for the next one. One length is put in at
 * a time, as the tape gives it. Its id names what was read so far, so that a swap clears the field once it is taken down.
 */
export const LengthsForm = ({ screen, gate, asks }: Props) => {
  const { lengthName, lengths: text, page } = screen.words;
  const found = squared(gate.given, asks);
  const suspect = "suspect" in found ? found.suspect?.name : undefined;
  const next = LENGTHS.find((name) => gate.given[name] === undefined) ?? suspect ?? "AB";
  return (
    <>
      <Readings gate={gate} asks={asks} words={screen.words} />
      <SayForm screen={screen} fields={{ type: "answer", gate: gate.id, kind: "lengths" }} class="number">
        <fieldset class="which" id={`which-${Object.entries(gate.given).flat().join("-").replaceAll(".", "_")}`}>
          <legend>{text.which}</legend>
          {LENGTHS.map((name) => (
            <label>
              <input type="radio" name="length" value={name} checked={name === next} required />
              <span>{lengthName(name)}</span>
            </label>
          ))}
          <label class="reading">
            {text.read}
            <input name="value" required maxlength={40} inputmode="decimal" autocomplete="off" />
          </label>
        </fieldset>
        <div class="keypad" data-keypad="tape" hx-morph-skip></div>
        <button type="submit">{page.record}</button>
      </SayForm>
    </>
  );
};

const Readings = ({ gate, asks, words, words: { lengths: text } }: Omit<Props, "screen"> & { words: Words }) => (
  <table class="lengths">
    <caption>{text.caption}</caption>
    <thead>
      <tr>
        <th scope="col">{text.from}</th>
        <th scope="col">{text.wanted}</th>
        <th scope="col">{text.read}</th>
      </tr>
    </thead>
    {LENGTHS.map((name) => (
      <Reading name={name} ft={gate.given[name]} asks={asks} words={words} />
    ))}
  </table>
);

type ReadingProps = { name: LengthName; ft: number | undefined; asks: Square; words: Words };

const Reading = ({ name, ft, asks, words }: ReadingProps) => {
  const { feetInches, inches, lengthName, lengths: text } = words;
  const wantFt = lengthFt(asks.want, name);
  const within = toleranceIn(wantFt, asks.inPer50Ft);
  const offIn = ft === undefined ? 0 : (ft - wantFt) * 12;
  return (
    <tr>
      <th scope="row">{lengthName(name)}</th>
      <td>
        {feetInches(wantFt)} <small>{text.within(inches(within))}</small>
      </td>
      <td>{ft === undefined ? text.notYet : Math.abs(offIn) <= within + 1e-9 ? feetInches(ft) : text.off(feetInches(ft), offIn)}</td>
    </tr>
  );
};
