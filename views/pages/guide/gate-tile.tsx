import type { Child, FC } from "hono/jsx";
import { isCumulative } from "../../../machines/install/checks/any-check.ts";
import type { Value } from "../../../machines/install/checks/registry.ts";
import type { Choice, TileInput } from "../../../machines/install/checks/tile-input.ts";
import type { Fields } from "../../../machines/install/checks/value-form.ts";
import { SayForm, type Screen } from "../../parts/say-form.tsx";
import { FiguresForm } from "./figures-form.tsx";
import { LengthsForm } from "./lengths-form.tsx";
import type { GateState } from "./state.ts";

type Props = { screen: Screen; gate: GateState };

/**
 * The gate under its call: what is asked, how it stands, and the buttons that answer it. Its id is the gate's, so that a
 * swap makes the next gate's fields from scratch: a number typed for one gate must never wait in the field of another.
 */
export const GateTile = ({ screen, gate, screen: { words } }: Props) => (
  <section id={`gate-${gate.id}`} class={`gate gate-${gate.status}`} aria-label={gate.ask}>
    {gate.because !== null && <p class="again">{words.guide.askedAgain(gate.because)}</p>}
    {gate.asked === "before" && <p class="again">{words.guide.askedBefore}</p>}
    <p class="ask">{gate.ask}</p>
    {gate.status !== "open" && gate.shown === null && !isCumulative(gate.check) && (
      <p class="standing">{gate.value === null ? gate.statusWords : words.guide.given(gate.value, gate.statusWords)}</p>
    )}
    {gate.found !== null && <p class="found">{gate.found}</p>}
    {isCumulative(gate.check) || <p class="limit">{words.guide.wanted(gate.limit)}</p>}
    {gate.notBy !== null && <p class="limit">{words.guide.notBy(gate.notBy)}</p>}
    {gate.status !== "open" && gate.status !== "good" && gate.shown === null && <p class="ifnot">{gate.ifNot}</p>}
    {gate.discrepancy !== null && (
      <a class="button" href={`/jobs/${screen.guide.job}/${gate.discrepancy}`}>
        {words.discrepancy.title}
      </a>
    )}
    <Shown screen={screen} gate={gate} />
    <Buttons screen={screen} gate={gate} />
    {gate.paper !== null && (
      <details>
        <summary>{words.guide.paper}</summary>
        <Answer screen={screen} gate={gate} fields={{ kind: "paper" }}>
          <Text name="by" text={words.guide.paperBy} />
          <Text name="document" text={words.guide.paperNo} />
          <label>
            {words.guide.paperDate}
            <input type="date" name="dated" required />
          </label>
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

/** A paper that waits: what it is, and the press of whoever has it before them as the second. */
const Shown = ({ screen, gate, screen: { words, me } }: Props) =>
  gate.shown && (
    <section class="shown" aria-label={words.guide.shown}>
      <p class="paper">{gate.value}</p>
      <p>{words.guide.shownBy(gate.shown.name)}</p>
      {me !== gate.shown.by && <Press screen={screen} gate={gate} fields={gate.shown.fields} text={words.guide.seenIt} class="seen" />}
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
  figures: ({ tile, ...props }) => (
    <>
      <FiguresForm {...props} tile={tile} />
      <div class="tiles apart">
        <Unknown {...props} />
      </div>
    </>
  ),
  each: ({ tile: { fields, rows }, ...props }) => (
    <>
      {rows.map(({ name, yes }) => (
        <fieldset class="each">
          <legend>{props.screen.words.guide.answeredFor(props.screen.words.partName(name), yes)}</legend>
          <Press {...props} fields={{ ...fields, name, value: "yes" }} text={props.screen.words.guide.yes} />
          <Press {...props} fields={{ ...fields, name, value: "no" }} text={props.screen.words.guide.no} />
        </fieldset>
      ))}
      <div class="tiles apart">
        <Unknown {...props} />
      </div>
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

/** The eight points of the compass. */
const POINTS_DEG = [0, 45, 90, 135, 180, 225, 270, 315] as const;

/** A wind reading, taken now. */
export const WindForm = ({ screen, screen: { words } }: { screen: Screen }) => (
  <SayForm screen={screen} fields={{ type: "reading", reading: "wind" }} class="wind">
    <div class="speeds">
      <label>
        {words.guide.wind}
        <input name="mph" required maxlength={10} inputmode="decimal" autocomplete="off" />
      </label>
      <label>
        {words.guide.gust}
        <input name="gustMph" maxlength={10} inputmode="decimal" autocomplete="off" />
      </label>
    </div>
    <label>
      {words.guide.from}
      <select name="fromDeg">
        <option value="">{words.guide.fromNotSaid}</option>
        {POINTS_DEG.map((deg) => (
          <option value={deg}>{words.compassPoint(deg)}</option>
        ))}
      </select>
    </label>
    <button type="submit">{words.guide.readWind}</button>
  </SayForm>
);
