import type { Thing } from "../../../machines/install/thing.ts";
import type { Things } from "../../../machines/install/things-of.ts";
import { JobScreen } from "../../parts/job-screen.tsx";
import { SayForm, type Screen } from "../../parts/say-form.tsx";
import { TextField } from "../../parts/text-field.tsx";

type Props = { readonly screen: Screen; readonly things: Things };
type Named = { readonly value: string; readonly text: string };

/** A piece taken out of use, a kit line reported short; and what is out put back, one by one. */
export const TroublePage = ({ screen, things, screen: { guide, words } }: Props) => {
  const { trouble } = words;
  return (
    <JobScreen screen={screen} title={trouble.title} class="trouble">
      {guide.outOfUse.map(({ thing, line }) => (
        <SayForm screen={screen} fields={{ type: "backInUse", ...fieldsOf(thing) }} class="put-back">
          <p class="alarm">{line}</p>
          <TextField name="because" label={trouble.how} />
          <button type="submit">{trouble.putBack(thing)}</button>
        </SayForm>
      ))}
      <SayForm screen={screen} fields={{ type: "outOfUse", is: "piece" }} class="take-out">
        <Select name="id" text={trouble.piece} of={things.pieces.map((id) => ({ value: id, text: words.pieceName(id) }))} />
        <TextField name="because" label={trouble.whatIsWrong} />
        <button type="submit">{trouble.takeOut}</button>
      </SayForm>
      <SayForm screen={screen} fields={{ type: "outOfUse", is: "kit", because: trouble.counted }} class="short">
        <Select name="item" text={trouble.item} of={things.items.map((item) => ({ value: item, text: words.kitName(item) }))} />
        <label>
          {trouble.howMany}
          <input name="short" required maxlength={6} inputmode="numeric" autocomplete="off" />
        </label>
        <button type="submit">{trouble.reportShort}</button>
      </SayForm>
    </JobScreen>
  );
};

const fieldsOf = (thing: Thing): Record<string, string | number> => ({ ...thing });

const Select = ({ name, text, of }: { name: string; text: string; of: readonly Named[] }) => (
  <label>
    {text}
    <select name={name}>
      {of.map((one) => (
        <option value={one.value}>{one.text}</option>
      ))}
    </select>
  </label>
);
