import type { ReadingRow, TileInput } from "../../../machines/install/checks/tile-input.ts";
import { SayForm, type Screen } from "../../parts/say-form.tsx";
import type { Words } from "../../text/words.ts";
import type { GateState } from "./state.ts";

type Readings = Extract<TileInput<unknown>, { input: "readings" }>;
type Props = { screen: Screen; gate: GateState; tile: Readings };

/**
 * Lengths by name: what is wanted and read, and one field for the next one. One length is put in at a time, as the tape
 * gives it. Its id names what was read so far, so that a swap clears the field once it is taken down.
 */
export const LengthsForm = ({ screen, gate, tile: { fields, rows, next } }: Props) => {
  const { lengthName, lengths: text, page } = screen.words;
  return (
    <>
      <Table rows={rows} words={screen.words} />
      <SayForm screen={screen} fields={{ type: "answer", gate: gate.id, ...fields }} class="number">
        <fieldset class="which" id={`which-${Object.entries(gate.given).flat().join("-").replaceAll(".", "_")}`}>
          <legend>{text.which}</legend>
          {rows.map(({ name }) => (
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

const Table = ({ rows, words, words: { lengths: text } }: Pick<Readings, "rows"> & { words: Words }) => (
  <table class="lengths">
    <caption>{text.caption}</caption>
    <thead>
      <tr>
        <th scope="col">{text.from}</th>
        <th scope="col">{text.wanted}</th>
        <th scope="col">{text.read}</th>
      </tr>
    </thead>
    {rows.map((row) => (
      <Row row={row} words={words} />
    ))}
  </table>
);

const Row = ({ row, words }: { row: ReadingRow; words: Words }) => {
  const { name, wantFt, withinIn, readFt, offIn, good } = row;
  const { feetInches, inches, lengthName, lengths: text } = words;
  return (
    <tr>
      <th scope="row">{lengthName(name)}</th>
      <td>
        {feetInches(wantFt)} <small>{text.within(inches(withinIn))}</small>
      </td>
      <td>{readFt === null ? text.notYet : good ? feetInches(readFt) : text.off(feetInches(readFt), offIn)}</td>
    </tr>
  );
};
