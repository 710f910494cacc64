import type { Value } from "../../../../machines/install/checks/registry.ts";
import type { TileInput } from "../../../../machines/install/checks/tile-input.ts";
import { type Asked, pickOf } from "../asked.ts";
import { PadForm } from "./pad-form.tsx";
import { Press, type Props } from "./press.tsx";

type Tile<I> = Extract<TileInput<Value>, { input: I }>;
type Of<I> = Props & { readonly tile: Tile<I>; readonly asked: Asked };

/** What was given and is not good is looked at first; then this leads to putting it in, or putting it in again. */
const Again = ({ screen, gate, asked, text }: Props & { asked: Asked; text: (name: string) => string }) => (
  <a class="button main" href={`/jobs/${screen.guide.job}?pick=${pickOf(gate, asked.item!.name)}`}>
    {text(screen.words.partName(asked.item!.name))}
  </a>
);

/** The next length of those that are taped. */
export const Reading = ({ tile, asked, ...props }: Of<"readings">) => {
  const { guide, lengths } = props.screen.words;
  if (asked.settled) return <Again {...props} asked={asked} text={asked.item!.given === null ? guide.measure : guide.measureAgain} />;
  const { name } = asked.item!;
  return <PadForm {...props} unit="tape" of={name} label={lengths.read} fields={{ ...tile.fields, length: name }} />;
};

/** The next of several figures. */
export const Figure = ({ tile, asked, ...props }: Of<"figures">) => {
  const { guide } = props.screen.words;
  if (asked.settled) return <Again {...props} asked={asked} text={guide.countAgain} />;
  const { name } = asked.item!;
  return <PadForm {...props} unit={tile.unit} of={name} label={guide.unit[tile.unit]} fields={{ ...tile.fields, name }} />;
};

/** Yes or no to the next name on a list. */
export const EachOne = ({ tile, asked, ...props }: Of<"each">) => {
  const { guide } = props.screen.words;
  if (asked.settled) return <Again {...props} asked={asked} text={guide.answerAgain} />;
  const { name } = asked.item!;
  return (
    <>
      <Press {...props} fields={{ ...tile.fields, name, value: "yes" }} text={guide.yes} class="main choice" />
      <Press {...props} fields={{ ...tile.fields, name, value: "no" }} text={guide.no} class="main choice" />
    </>
  );
};
