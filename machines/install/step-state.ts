import type { GateId, StepId } from "./ids.ts";
import { did, onlyDrivers, refuse, refuseFor, roleRefusal, whileHeld, whileStopped } from "./outcomes.ts";
import { STRIKE_FROM } from "./phases/struck.ts";
import type { Refusal } from "./refusals.ts";
import { type Event, install, type Judged } from "./setup.ts";
import { key } from "./state-key.ts";
import { missing } from "./status.ts";
import type { Script, Step } from "./step.ts";

const gateNamed = (event: Event) => ("gate" in event ? event.gate : "");
const arrive = (step: Step) => ({ type: "arrive" as const, params: { step } });
const reopen = (steps: readonly Step[]) => ({ type: "reopen" as const, params: { steps } });

/** Gates that two people answer: the one this gate looks at, and the one that looks at it. */
const pairedWith = ({ gate }: Step, steps: readonly Step[]): GateId[] =>
  gate === null
    ? []
    : [...(gate.otherThan === null ? [] : [gate.otherThan]), ...steps.flatMap((s) => (s.gate?.otherThan === gate.id ? [s.gate.id] : []))];

/** What every call says to an answer or a waiver. Only its own gate listens, and only to those it allows. */
function gateHandlers(step: Step, steps: readonly Step[]) {
  const here = { step };
  const elsewhere = {
    guard: { type: "notAskedHere" as const, params: here },
    ...refuseFor(({ event }) => [{ why: "notAskedHere", gate: gateNamed(event) }]),
  };
  return {
    answer: [
      elsewhere,
      { guard: { type: "mayNotAnswer" as const, params: here }, ...refuseFor(({ event }) => roleRefusal(step.gate?.who ?? [], event)) },
      { guard: { type: "wrongKind" as const, params: here }, ...refuseFor(({ event }) => [{ why: "wrongKind", gate: gateNamed(event) }]) },
      { guard: { type: "firstDevice" as const, params: { gates: pairedWith(step, steps) } }, ...refuse({ why: "sameDevice" }) },
      ...(step.gate ? [{ actions: [{ type: "answer" as const, params: { asks: step.gate.asks } }, did("answered")] }] : []),
    ],
    waive: [
      elsewhere,
      onlyDrivers,
      {
        guard: { type: "hardGate" as const, params: here },
        ...refuseFor(({ event }): Refusal[] => [{ why: "hardGate", gate: gateNamed(event) }]),
      },
      { actions: ["waive" as const, did("waived")] },
    ],
  };
}

/** Down from here: to the part of the strike that what is on the site asks for. With nothing in the ground the job closes. */
function standDown(script: Script) {
  const to = (is: string, id: StepId) => {
    const step = script.steps.find((s) => s.id === id)!;
    return {
      guard: { type: "siteIs" as const, params: { is } },
      target: `#${key(id)}`,
      actions: [{ type: "beginAgain" as const, params: { id } }, arrive(step), "turn" as const, did("standingDown")],
    };
  };
  return [
    onlyDrivers,
    ...whileHeld,
    to("raised", STRIKE_FROM.standing),
    to("spread", STRIKE_FROM.cloth),
    to("staked", STRIKE_FROM.stakes),
    { target: "#closed", actions: ["backToWork" as const, "turn" as const, did("closed")] },
  ];
}

const notClear = (step: Step) => refuseFor(({ context, event }: Judged) => missing(step, context, event.at));
const gates = (step: Step) => [onlyDrivers, ...whileHeld, ...(step.committed ? [] : [whileStopped])];

/** One call of the procedure, as a leaf of the chart. The last candidate of every event refuses, so there is always an answer. */
export function call(script: Script, at: number) {
  const { steps } = script;
  const step = steps[at]!;
  // A strike is not gone back out of: what was checked on the way up is coming down.
  const before = step.phase === "struck" && steps[at - 1]?.phase !== "struck" ? undefined : steps[at - 1];
  const after = steps[at + 1];
  const goOnAt = step.goOnFrom ?? step.id;
  const goneOver = steps.slice(
    steps.findIndex((s) => s.id === goOnAt),
    at + 1,
  );
  const leave = [reopen(goneOver), { type: "leaveFor" as const, params: { goOnAt } }, "turn" as const, did("makingSafe")];
  return install.createStateConfig({
    id: key(step.id),
    on: {
      next: [
        ...gates(step),
        {
          guard: { type: "clear", params: { step } },
          target: after ? `#${key(after.id)}` : "#closed",
          actions: after ? [arrive(after), "turn", did("moved")] : ["turn", did("closed")],
        },
        notClear(step),
      ],
      back: before
        ? [
            onlyDrivers,
            ...whileHeld,
            { guard: { type: "atTheBeginning", params: { id: step.id } }, ...refuse({ why: "nothingBefore" }) },
            { target: `#${key(before.id)}`, actions: [reopen([before, step]), "turn", did("wentBack")] },
          ]
        : [onlyDrivers, refuse({ why: "nothingBefore" })],
      ...gateHandlers(step, steps),
      makeSafe:
        step.phase === "standing"
          ? [{ target: "#safe_standing", actions: leave }]
          : [
              { guard: "raised", target: "#safe_up", actions: leave },
              { target: "#safe_ground", actions: leave },
            ],
      standDown: step.phase === "struck" ? [onlyDrivers, refuse({ why: "alreadyStandingDown" })] : standDown(script),
    },
  });
}

/** One call of a way out. Its own calls ask nothing; only going on again does. */
export function wayCall(script: Script, way: readonly Step[], at: number) {
  const step = way[at]!;
  const before = way[at - 1];
  const after = way[at + 1];
  const onward = after
    ? [{ guard: { type: "clear" as const, params: { step } }, target: `#${key(after.id)}`, actions: ["turn" as const, did("moved")] }]
    : script.steps.map((s) => ({
        guard: { type: "goesOnHere" as const, params: { id: s.id, step } },
        target: `#${key(s.id)}`,
        actions: ["backToWork" as const, "turn" as const, did("goingOn")],
      }));
  return install.createStateConfig({
    id: key(step.id),
    on: {
      next: [...gates(step), ...onward, notClear(step)],
      back: before
        ? [onlyDrivers, ...whileHeld, { target: `#${key(before.id)}`, actions: [reopen([before, step]), "turn", did("wentBack")] }]
        : [onlyDrivers, refuse({ why: "nothingBefore" })],
      ...gateHandlers(step, way),
      // From the first call again: something else has gone wrong. Where going on starts does not change.
      makeSafe: [{ target: `#${key(way[0]!.id)}`, actions: [reopen(way), "turn", did("makingSafe")] }],
      standDown: standDown(script),
    },
  });
}
