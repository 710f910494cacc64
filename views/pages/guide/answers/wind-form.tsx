import type { Child } from "hono/jsx";
import { Keypad } from "../../../parts/keypad.tsx";
import { SayForm, type Screen } from "../../../parts/say-form.tsx";
import { fieldId } from "./press.tsx";

/** The eight points of the compass. */
const POINTS_DEG = [0, 45, 90, 135, 180, 225, 270, 315] as const;

type Props = {
  readonly screen: Screen;
  /** What its fields are called where a unit is chosen beside them. */
  readonly labels?: { readonly wind: string; readonly gust: string };
  readonly children?: Child;
};

/** A wind reading, taken now: wind, gust, and where it comes from. */
export const WindForm = ({ screen, screen: { guide: state, words }, labels = words.guide, children }: Props) => (
  <SayForm screen={screen} fields={{ type: "reading", reading: "wind" }} class="put-in-by three wind">
    {children}
    <Keypad unit="wind" words={words}>
      <select name="fromDeg" aria-label={words.guide.from} class="from">
        <option value="">{words.guide.from}</option>
        {POINTS_DEG.map((deg) => (
          <option value={deg}>{words.compassPoint(deg)}</option>
        ))}
      </select>
    </Keypad>
    <label class="put-in" id={fieldId("wind", state.revision)}>
      {labels.wind}
      <input name="mph" required maxlength={10} inputmode="decimal" autocomplete="off" />
    </label>
    <label class="put-in" id={fieldId("gust", state.revision)}>
      {labels.gust}
      <input name="gustMph" maxlength={10} inputmode="decimal" autocomplete="off" />
    </label>
    <button type="submit" class="main">
      {words.page.record}
    </button>
  </SayForm>
);
