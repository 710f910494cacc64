import type { Values } from "../../parts/fields.tsx";
import { StepField } from "./field.tsx";
import { Frame, Send, Unpressed } from "./frame.tsx";
import type { StepProps } from "./state.ts";
import { STEP_FIELDS } from "./steps.ts";

const SOIL = "sheet.soil";
const GROUND = "site.soilKnown";

type Props = StepProps & {
  news: string | null;
  /** The soil that the sheet names: empty where it names none, `null` where nobody has the sheet. */
  soil: string | null;
  /** Places that went with another address, as they were sent, by their fields: one press says that they are this one's too. */
  left: Values;
};

/** Where help is sent, where the crew gathers and shelters, and whether the ground is the soil that the sheet names. */
export const SiteStep = ({ soil, left, ...props }: Props) => {
  const { draft: text } = props.words;
  // A soil that stands is the sheet's and not the site's to change: only the ground is asked for.
  const stands = soil !== null && soil !== "" && !props.problems[SOIL];
  const shown = STEP_FIELDS.site.filter(({ name }) => (name === SOIL ? soil !== null && !stands : name !== GROUND || soil !== null));
  return (
    <Frame step="site" {...props}>
      <form method="post" action={`/drafts/${props.draft}/site`}>
        <Unpressed go="stay" words={props.words} />
        {soil !== null && <input type="hidden" name="asked.soil" value={props.values[SOIL] ?? ""} />}
        {shown.map(({ name }) => (
          <StepField name={name} {...props} {...(name === GROUND && stands ? { text: text.groundIs(soil) } : {})} />
        ))}
        {Object.entries(left).map(([name, place]) => (
          <input type="hidden" name={`left.${name}`} value={place} />
        ))}
        <button type="submit" name="go" value="ground">
          {props.words.siteForms.onDraft}
        </button>
        {Object.entries(props.problems)
          .filter(([name]) => name.startsWith("siteModel"))
          .map(([, why]) => (
            <p class="wrong">{why}</p>
          ))}
        <Send words={props.words} main={text.on}>
          {Object.keys(left).length > 0 && (
            <button type="submit" name="go" value="same">
              {text.samePlaces(Object.values(left))}
            </button>
          )}
          {stands && (
            <button type="submit" name="go" value="soil">
              {text.otherSoil}
            </button>
          )}
        </Send>
      </form>
    </Frame>
  );
};
