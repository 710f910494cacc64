import type { Value } from "../../../../machines/install/checks/registry.ts";
import type { Choice, TileInput } from "../../../../machines/install/checks/tile-input.ts";
import { isNonePicked, pickNone } from "../asked.ts";
import { PadForm } from "./pad-form.tsx";
import { Choices, Press, type Props } from "./press.tsx";

type Tile = Extract<TileInput<Value>, { input: "number" }>;
type Shown = Props & { readonly tile: Tile };

/** A number. "None" beside it leads to a question of its own: what it leaves unmeasured may be the power line. */
export const NumberOrNone = ({ tile, ...props }: Shown) => {
  const { gate, screen } = props;
  const none = tile.choices.find(({ value }) => value.kind === "none");
  if (none && isNonePicked(gate, screen.pick)) return <SureOfNone {...props} none={none} />;
  const others = tile.choices.filter((choice) => choice !== none);
  return (
    <PadForm {...props} unit={tile.keypad} fields={tile.fields} label={screen.words.guide.unit[tile.keypad]}>
      {tile.choices.length > 0 && (
        <>
          <Choices {...props} choices={others} />
          {none && (
            <a class="button main choice" href={`/jobs/${screen.guide.job}?pick=${pickNone(gate)}`}>
              {screen.words.valueText(none.value)}
            </a>
          )}
        </>
      )}
    </PadForm>
  );
};

/** Yes at the left: a second tap where "none" was falls on no. */
const SureOfNone = ({ none, ...props }: Props & { none: Choice<Value> }) => {
  const { guide, words } = props.screen;
  return (
    <>
      <Press {...props} fields={none.fields} text={words.guide.yes} class="main choice" />
      <a class="button main choice" href={`/jobs/${guide.job}`}>
        {words.guide.no}
      </a>
    </>
  );
};
