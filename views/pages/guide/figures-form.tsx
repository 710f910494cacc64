import type { TileInput } from "../../../machines/install/checks/tile-input.ts";
import { SayForm, type Screen } from "../../parts/say-form.tsx";
import type { GateState } from "./state.ts";

type Figures = Extract<TileInput<unknown>, { input: "figures" }>;
type Props = { screen: Screen; gate: GateState; tile: Figures };

/**
 * Several figures, one put in at a time: its name picked, the next one that is missing already. Its id names what was given so
 * far, so that a swap clears the field once it is taken.
 */
export const FiguresForm = ({ screen, gate, tile: { fields, unit, rows } }: Props) => {
  const { guide: text, page, partName } = screen.words;
  const next = (rows.find((row) => row.given === null) ?? rows.find((row) => !row.good) ?? rows[0])?.name;
  return (
    <SayForm screen={screen} fields={{ type: "answer", gate: gate.id, ...fields }} class="number">
      <fieldset class="which" id={`which-${Object.entries(gate.given).flat().join("-").replaceAll(".", "_")}`}>
        <legend>{text.whichFigure}</legend>
        {rows.map(({ name, given }) => (
          <label>
            <input type="radio" name="name" value={name} checked={name === next} required />
            <span>{given === null ? partName(name) : text.figure(partName(name), given)}</span>
          </label>
        ))}
        <label class="reading">
          {text.itsFigure[unit]}
          <input name="value" required maxlength={40} inputmode="decimal" autocomplete="off" />
        </label>
      </fieldset>
      <div class="keypad" data-keypad={unit} hx-morph-skip></div>
      <button type="submit">{page.record}</button>
    </SayForm>
  );
};
