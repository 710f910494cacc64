import { isCumulative } from "../../../machines/install/status.ts";
import { SayForm, type Screen } from "../../parts/say-form.tsx";
import { changes } from "../../text/en/changes.ts";
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
        <Answer screen={screen} gate={gate} kind="paper">
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
  const unknown = <Press screen={screen} gate={gate} kind="unknown" text={label.unknown} class="quiet" />;
  const { check } = gate;
  switch (check.kind) {
    case "yesNo":
      return (
        <div class="tiles">
          <Press screen={screen} gate={gate} kind="yesNo" value="yes" text={label.yes} />
          <Press screen={screen} gate={gate} kind="yesNo" value="no" text={label.no} />
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
            <button type="submit">{label.record}</button>
          </SayForm>
          <div class="tiles">
            {check.kind === "measure" && check.noneIsGood && <Press screen={screen} gate={gate} kind="none" text={label.noneHere} />}
            {unknown}
          </div>
        </>
      );
    case "document":
      return (
        <>
          {check.expected !== null && (
            <Press screen={screen} gate={gate} kind="document" value={check.expected} text={label.thisOne(check.expected)} />
          )}
          <Answer screen={screen} gate={gate} kind="document">
            <Text name="value" text={check.expected === null ? label.paperNo : label.another} />
            <button type="submit">{label.record}</button>
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
