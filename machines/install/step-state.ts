import type { GateId, StepId } from "./ids.ts";
import { did, refuse, refuseFor, refuseIfHeld, refuseIfStopped, refuseUnlessDriver, roleRefusal } from "./outcomes.ts";
import { STRIKE_FROM } from "./phases/struck.ts";
import type { Refusal } from "./refusals.ts";
import { type Event, install, type Judged } from "./setup.ts";
import { stateKey } from "./state-key.ts";
import { blockers } from "./status.ts";
import type { Script, Step } from "./step.ts";

const gateNamed = (event: Event) => ("gate" in event ? event.gate : "");
const arrive = (step: Step) => ({ type: "arrive" as const, params: { step } });
const reopen = (steps: readonly Step[]) => ({ type: "reopen" as const, params: { steps } });

/** Gates that two people answer: the one this gate looks at, and the one that looks at it. */
const pairedWith = ({ gate }: Step, steps: readonly Step[]): GateId[] =>
  gate === null
    ? []
    : [
        ...(gate.secondPersonTo === null ? [] : [gate.secondPersonTo]),
        ...steps.flatMap((s) => (s.gate?.secondPersonTo === gate.id ? [s.gate.id] : [])),
      ];

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
      { guard: { type: "mayNotAnswer" as const, params: here }, ...refuseFor(({ event }) => roleRefusal(step.gate?.roles ?? [], event)) },
      { guard: { type: "wrongKind" as const, params: here }, ...refuseFor(({ event }) => [{ why: "wrongKind", gate: gateNamed(event) }]) },
      { guard: { type: "firstDevice" as const, params: { gates: pairedWith(step, steps) } }, ...refuse({ why: "sameDevice" }) },
      ...(step.gate ? [{ actions: [{ type: "answer" as const, params: { asks: step.gate.check } }, did("answered")] }] : []),
    ],
    waive: [
      elsewhere,
      refuseUnlessDriver,
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
      target: `#${stateKey(id)}`,
      actions: [{ type: "beginAgain" as const, params: { id } }, arrive(step), "revise" as const, did("standingDown")],
    };
  };
  return [
    refuseUnlessDriver,
    ...refuseIfHeld,
    to("raised", STRIKE_FROM.standing),
    to("spread", STRIKE_FROM.cloth),
    to("staked", STRIKE_FROM.stakes),
    { target: "#closed", actions: ["backToWork" as const, "revise" as const, did("closed")] },
  ];
}

const notClear = (step: Step) => refuseFor(({ context, event }: Judged) => blockers(step, context, event.at));
const gates = (step: Step) => [refuseUnlessDriver, ...refuseIfHeld, ...(step.committed ? [] : [refuseIfStopped])];

/** One call of the procedure, as a leaf of the chart. The last candidate of every event refuses, so there is always an answer. */
export function stepState(script: Script, at: number) {
  const { steps } = script;
  const step = steps[at]!;
  // A strike is not gone back out of: what was checked on the way up is coming down.
  const before = step.phase === "struck" && steps[at - 1]?.phase !== "struck" ? undefined : steps[at - 1];
  const after = steps[at + 1];
  const resumeAt = step.resumeFrom ?? step.id;
  const goneOver = steps.slice(
    steps.findIndex((s) => s.id === resumeAt),
    at + 1,
  );
  const leave = [reopen(goneOver), { type: "leaveFor" as const, params: { resumeAt } }, "revise" as const, did("makingSafe")];
  return install.createStateConfig({
    id: stateKey(step.id),
    on: {
      next: [
        ...gates(step),
        {
          guard: { type: "clear", params: { step } },
          target: after ? `#${stateKey(after.id)}` : "#closed",
          actions: after ? [arrive(after), "revise", did("moved")] : ["revise", did("closed")],
        },
        notClear(step),
      ],
      back: before
        ? [
            refuseUnlessDriver,
            ...refuseIfHeld,
            { guard: { type: "atTheBeginning", params: { id: step.id } }, ...refuse({ why: "nothingBefore" }) },
            { target: `#${stateKey(before.id)}`, actions: [reopen([before, step]), "revise", did("wentBack")] },
          ]
        : [refuseUnlessDriver, refuse({ why: "nothingBefore" })],
      ...gateHandlers(step, steps),
      makeSafe:
        step.phase === "standing"
          ? [{ target: "#safe_standing", actions: leave }]
          : [
              { guard: "raised", target: "#safe_up", actions: leave },
              { target: "#safe_ground", actions: leave },
            ],
      standDown: step.phase === "struck" ? [refuseUnlessDriver, refuse({ why: "alreadyStandingDown" })] : standDown(script),
    },
  });
}

/** One call of a way out. Its own calls ask nothing; only going on again does. */
export function escapeStep(script: Script, way: readonly Step[], at: number) {
  const step = way[at]!;
  const before = way[at - 1];
  const after = way[at + 1];
  const onward = after
    ? [
        {
          guard: { type: "clear" as const, params: { step } },
          target: `#${stateKey(after.id)}`,
          actions: ["revise" as const, did("moved")],
        },
      ]
    : script.steps.map((s) => ({
        guard: { type: "goesOnHere" as const, params: { id: s.id, step } },
        target: `#${stateKey(s.id)}`,
        actions: ["backToWork" as const, "revise" as const, did("goingOn")],
      }));
  return install.createStateConfig({
    id: stateKey(step.id),
    on: {
      next: [...gates(step), ...onward, notClear(step)],
      back: before
        ? [
            refuseUnlessDriver,
            ...refuseIfHeld,
            { target: `#${stateKey(before.id)}`, actions: [reopen([before, step]), "revise", did("wentBack")] },
          ]
        : [refuseUnlessDriver, refuse({ why: "nothingBefore" })],
      ...gateHandlers(step, way),
      // From the first call again: something else has gone wrong. Where going on starts does not change.
      makeSafe: [{ target: `#${stateKey(way[0]!.id)}`, actions: [reopen(way), "revise", did("makingSafe")] }],
      standDown: standDown(script),
    },
  });
}
