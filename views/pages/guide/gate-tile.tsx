import { isCumulative } from "../../../machines/install/status.ts";
import { SayForm, type Screen } from "../../parts/say-form.tsx";
import { LengthsForm } from "./lengths-form.tsx";
import type { GateState } from "./state.ts";

type Props = { screen: Screen; gate: GateState };

/**
 * The gate under its call: what is asked, how it stands, and the buttons that answer it. Its id is the gate's, so that a
 * swap makes the next gate's fields anew: a number typed for one gate must never wait in the field of another.
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
        <Answer screen={screen} gate={gate} kind="paper">
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

const Answer = ({ screen, gate, kind, children }: Props & { kind: string; children?: unknown }) => (
  <SayForm screen={screen} fields={{ type: "answer", gate: gate.id, kind }}>
    {children as never}
  </SayForm>
);
const Press = ({ screen, gate, kind, value, text, ...rest }: Props & { kind: string; value?: string; text: string; class?: string }) => (
  <SayForm screen={screen} fields={{ type: "answer", gate: gate.id, kind, ...(value === undefined ? {} : { value }) }} class={rest.class}>
    <button type="submit">{text}</button>
  </SayForm>
);
const Text = ({ name, text, mode }: { name: string; text: string; mode?: "decimal" }) => (
  <label>
    {text}
    <input name={name} required maxlength={80} inputmode={mode} autocomplete="off" />
  </label>
);

const Buttons = ({ screen, gate }: Props) => {
  const { guide: text, lengths, page } = screen.words;
  const unknown = <Press screen={screen} gate={gate} kind="unknown" text={text.unknown} class="quiet" />;
  const { check } = gate;
  switch (check.kind) {
    case "yesNo":
      return (
        <div class="tiles">
          <Press screen={screen} gate={gate} kind="yesNo" value="yes" text={text.yes} />
          <Press screen={screen} gate={gate} kind="yesNo" value="no" text={text.no} />
          {unknown}
        </div>
      );
    case "count":
    case "sameCount":
    case "measure":
      return (
        <>
          <SayForm
            screen={screen}
            fields={{
              type: "answer",
              gate: gate.id,
              kind: check.kind === "measure" ? "measure" : "count",
              ...(check.kind === "measure" ? { unit: check.unit } : {}),
            }}
            class="number"
          >
            <label>
              <input name="value" aria-label={gate.ask} required maxlength={40} inputmode="decimal" autocomplete="off" />
            </label>
            <div class="keypad" data-keypad={check.kind === "measure" ? check.unit : "count"} hx-morph-skip></div>
            <button type="submit">{page.record}</button>
          </SayForm>
          <div class="tiles">
            {check.kind === "measure" && check.noneIsGood && <Press screen={screen} gate={gate} kind="none" text={text.noneHere} />}
            {unknown}
          </div>
        </>
      );
    case "document":
      return (
        <>
          {check.expected !== null && (
            <Press screen={screen} gate={gate} kind="document" value={check.expected} text={text.thisOne(check.expected)} />
          )}
          <Answer screen={screen} gate={gate} kind="document">
            <Text name="value" text={check.expected === null ? text.paperNo : text.another} />
            <button type="submit">{page.record}</button>
          </Answer>
        </>
      );
    case "square":
      return (
        <>
          <LengthsForm screen={screen} gate={gate} asks={check} />
          {Object.keys(gate.given).length > 0 && (
            <div class="tiles apart">
              <Press screen={screen} gate={gate} kind="unknown" text={lengths.afresh} class="quiet" />
            </div>
          )}
        </>
      );
    case "counts":
      return (
        <>
          <a class="button" href={`/jobs/${screen.guide.job}/truck`}>
            {lengths.list}
          </a>
          {unknown}
        </>
      );
    case "wind":
      return <WindForm screen={screen} />;
    case "paperOnly":
      return null;
  }
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
