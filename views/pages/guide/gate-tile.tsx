import type { Child, FC } from "hono/jsx";
import { isCumulative } from "../../../machines/install/checks/any-check.ts";
import type { Value } from "../../../machines/install/checks/registry.ts";
import type { Choice, TileInput } from "../../../machines/install/checks/tile-input.ts";
import type { Fields } from "../../../machines/install/checks/value-form.ts";
import { SayForm, type Screen } from "../../parts/say-form.tsx";
import { LengthsForm } from "./lengths-form.tsx";
import type { GateState } from "./state.ts";

type Props = { screen: Screen; gate: GateState };

/**
 * The gate under its call: what is asked, how it stands, and the buttons that answer it. Its id is the gate's, so that a
 * swap makes the next gate's fields from scratch: a number typed for one gate must never wait in the field of another.
 */
export const GateTile = ({ screen, gate, screen: { words } }: Props) => (
  <section id={`gate-${gate.id}`} class={`gate gate-${gate.status}`} aria-label={gate.ask}>
    <p class="ask">{gate.ask}</p>
    {gate.status !== "open" && !isCumulative(gate.check) && (
      <p class="standing">{gate.value === null ? gate.statusWords : words.guide.given(gate.value, gate.statusWords)}</p>
    )}
    {gate.found !== null && <p class="found">{gate.found}</p>}
    {isCumulative(gate.check) || <p class="limit">{words.guide.wanted(gate.limit)}</p>}
    {gate.notBy !== null && <p class="limit">{words.guide.notBy(gate.notBy)}</p>}
    {gate.status !== "open" && gate.status !== "good" && <p class="ifnot">{gate.ifNot}</p>}
    {gate.discrepancy !== null && (
      <a class="button" href={`/jobs/${screen.guide.job}/${gate.discrepancy}`}>
        {words.discrepancy.title}
      </a>
    )}
    <Buttons screen={screen} gate={gate} />
    {gate.paper !== null && (
      <details>
        <summary>{words.guide.paper}</summary>
        <Answer screen={screen} gate={gate} fields={{ kind: "paper" }}>
          <Text name="by" text={words.guide.paperBy} />
          <Text name="document" text={words.guide.paperNo} />
          <button type="submit">{words.page.record}</button>
        </Answer>
      </details>
    )}
    {!gate.hard && (
      <details>
        <summary>{words.guide.leave}</summary>
        <SayForm screen={screen} fields={{ type: "waive", gate: gate.id }}>
          <Text name="because" text={words.page.because} />
          <button type="submit">{words.guide.leave}</button>
        </SayForm>
      </details>
    )}
    <p class="source">{words.guide.source(gate.source)}</p>
  </section>
);

const Answer = ({ screen, gate, fields, children, ...rest }: Props & { fields: Fields; class?: string; children?: Child }) => (
  <SayForm screen={screen} fields={{ type: "answer", gate: gate.id, ...fields }} {...rest}>
    {children}
  </SayForm>
);
const Press = ({ text, ...props }: Props & { fields: Fields; text: string; class?: string }) => (
  <Answer {...props}>
    <button type="submit">{text}</button>
  </Answer>
);
const Text = ({ name, text, mode }: { name: string; text: string; mode?: "decimal" }) => (
  <label>
    {text}
    <input name={name} required maxlength={80} inputmode={mode} autocomplete="off" />
  </label>
);

const Unknown = ({ text, ...props }: Props & { text?: string }) => (
  <Press {...props} fields={{ kind: "unknown" }} text={text ?? props.screen.words.guide.unknown} class="quiet" />
);
const Choices = ({ choices, ...props }: Props & { choices: readonly Choice<Value>[] }) => (
  <>
    {choices.map(({ fields, value }) => (
      <Press {...props} fields={fields} text={props.screen.words.valueText(value)} />
    ))}
  </>
);

type Input = TileInput<Value>["input"];
type Inputs = { readonly [K in Input]: FC<Props & { tile: Extract<TileInput<Value>, { input: K }> }> };

/** One for each way to answer. A kind of check says which of them is its own, and with what in it. */
const INPUTS: Inputs = {
  choices: ({ tile, ...props }) => (
    <div class="tiles">
      <Choices {...props} choices={tile.choices} />
      <Unknown {...props} />
    </div>
  ),
  number: ({ tile, ...props }) => (
    <>
      <Answer {...props} fields={tile.fields} class="number">
        <label>
          <input name="value" aria-label={props.gate.ask} required maxlength={40} inputmode="decimal" autocomplete="off" />
        </label>
        <div class="keypad" data-keypad={tile.keypad} hx-morph-skip></div>
        <button type="submit">{props.screen.words.page.record}</button>
      </Answer>
      <div class="tiles">
        <Choices {...props} choices={tile.choices} />
        <Unknown {...props} />
      </div>
    </>
  ),
  readings: ({ tile, ...props }) => (
    <>
      <LengthsForm {...props} tile={tile} />
      {Object.keys(props.gate.given).length > 0 && (
        <div class="tiles apart">
          <Unknown {...props} text={props.screen.words.lengths.afresh} />
        </div>
      )}
    </>
  ),
  document: ({ tile: { expected, fields }, ...props }) => (
    <>
      {expected !== null && <Press {...props} fields={{ ...fields, value: expected }} text={props.screen.words.guide.thisOne(expected)} />}
      <Answer {...props} fields={fields}>
        <Text name="value" text={expected === null ? props.screen.words.guide.paperNo : props.screen.words.guide.another} />
        <button type="submit">{props.screen.words.page.record}</button>
      </Answer>
    </>
  ),
  link: ({ tile, ...props }) => (
    <>
      <a class="button" href={`/jobs/${props.screen.guide.job}/${tile.to}`}>
        {props.screen.words.lengths.list}
      </a>
      <Unknown {...props} />
    </>
  ),
  wind: ({ screen }) => <WindForm screen={screen} />,
  none: () => null,
};

const Buttons = (props: Props) => {
  const { tile } = props.gate;
  // Each way to answer stands under its own name: an index cannot tell TypeScript that.
  const Shown = INPUTS[tile.input] as FC<Props & { tile: TileInput<Value> }>;
  return <Shown {...props} tile={tile} />;
};

/** A wind reading, taken now. */
export const WindForm = ({ screen, screen: { words } }: { screen: Screen }) => (
  <SayForm screen={screen} fields={{ type: "reading", reading: "wind" }} class="wind">
    <label>
      {words.guide.wind}
      <input name="mph" required maxlength={10} inputmode="decimal" autocomplete="off" />
    </label>
    <label>
      {words.guide.gust}
      <input name="gustMph" maxlength={10} inputmode="decimal" autocomplete="off" />
    </label>
    <button type="submit">{words.guide.readWind}</button>
  </SayForm>
);
