import type { Child, FC } from "hono/jsx";
import { isCumulative } from "../../../machines/install/checks/any-check.ts";
import type { Value } from "../../../machines/install/checks/registry.ts";
import type { Choice, TileInput } from "../../../machines/install/checks/tile-input.ts";
import type { Fields } from "../../../machines/install/checks/value-form.ts";
import { SayForm, type Screen } from "../../parts/say-form.tsx";
import { changes } from "../../text/en/changes.ts";
import { valueText } from "../../text/en/limits.ts";
import { label } from "../../text/en/page.ts";
import { lengths } from "../../text/en/squaring.ts";
import { LengthsForm } from "./lengths-form.tsx";
import type { GateState } from "./state.ts";

type Props = { screen: Screen; gate: GateState };

/**
 * The gate under its call: what is asked, how it stands, and the buttons that answer it. Its id is the gate's, so that a
 * swap makes the next gate's fields anew: a number typed for one gate must never wait in the field of another.
 */
export const GateTile = ({ screen, gate }: Props) => (
  <section id={`gate-${gate.id}`} class={`gate gate-${gate.status}`} aria-label={gate.ask}>
    <p class="ask">{gate.ask}</p>
    {gate.status !== "open" && !isCumulative(gate.check) && (
      <p class="standing">{gate.value === null ? gate.statusWords : label.given(gate.value, gate.statusWords)}</p>
    )}
    {gate.found !== null && <p class="found">{gate.found}</p>}
    {isCumulative(gate.check) || <p class="limit">{label.wanted(gate.limit)}</p>}
    {gate.notBy !== null && <p class="limit">{label.notBy(gate.notBy)}</p>}
    {gate.status !== "open" && gate.status !== "good" && <p class="ifnot">{gate.ifNot}</p>}
    {gate.discrepancy !== null && (
      <a class="button" href={`/jobs/${screen.guide.job}/${gate.discrepancy}`}>
        {changes.title}
      </a>
    )}
    <Buttons screen={screen} gate={gate} />
    {gate.paper !== null && (
      <details>
        <summary>{label.paper}</summary>
        <Answer screen={screen} gate={gate} fields={{ kind: "paper" }}>
          <Text name="by" text={label.paperBy} />
          <Text name="document" text={label.paperNo} />
          <button type="submit">{label.record}</button>
        </Answer>
      </details>
    )}
    {!gate.hard && (
      <details>
        <summary>{label.leave}</summary>
        <SayForm screen={screen} fields={{ type: "waive", gate: gate.id }}>
          <Text name="because" text={label.because} />
          <button type="submit">{label.leave}</button>
        </SayForm>
      </details>
    )}
    <p class="source">{label.source(gate.source)}</p>
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

const Unknown = ({ text = label.unknown, ...props }: Props & { text?: string }) => (
  <Press {...props} fields={{ kind: "unknown" }} text={text} class="quiet" />
);
const Choices = ({ choices, ...props }: Props & { choices: readonly Choice<Value>[] }) => (
  <>
    {choices.map(({ fields, value }) => (
      <Press {...props} fields={fields} text={valueText(value)} />
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
        <button type="submit">{label.record}</button>
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
          <Unknown {...props} text={lengths.afresh} />
        </div>
      )}
    </>
  ),
  document: ({ tile: { expected, fields }, ...props }) => (
    <>
      {expected !== null && <Press {...props} fields={{ ...fields, value: expected }} text={label.thisOne(expected)} />}
      <Answer {...props} fields={fields}>
        <Text name="value" text={expected === null ? label.paperNo : label.another} />
        <button type="submit">{label.record}</button>
      </Answer>
    </>
  ),
  link: ({ tile, ...props }) => (
    <>
      <a class="button" href={`/jobs/${props.screen.guide.job}/${tile.to}`}>
        {lengths.list}
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
export const WindForm = ({ screen }: { screen: Screen }) => (
  <SayForm screen={screen} fields={{ type: "reading", reading: "wind" }} class="wind">
    <label>
      {label.wind}
      <input name="mph" required maxlength={10} inputmode="decimal" autocomplete="off" />
    </label>
    <label>
      {label.gust}
      <input name="gustMph" maxlength={10} inputmode="decimal" autocomplete="off" />
    </label>
    <button type="submit">{label.readWind}</button>
  </SayForm>
);
