import type { GateId, StepId } from "./ids.ts";
import { asked, entry } from "./missing.ts";
import { ahead, behind, nearest } from "./neighbors.ts";
import { did, refuse, refuseFor, refuseIfHeld, refuseUnlessAllowed, roleRefusal } from "./outcomes.ts";
import { paperRefusal } from "./paper.ts";
import { STRIKE_FROM } from "./phases/struck.ts";
import type { Refusal } from "./refusals.ts";
import { indexOf } from "./script-index.ts";
import { type Event, gateSpokenOf, install, type Judged, type Leaf } from "./setup.ts";
import { stateKey } from "./state-key.ts";
import type { Script, Step } from "./step.ts";

const gateNamed = (event: Event): GateId => (event.type === "answer" || event.type === "waive" ? event.gate : "");
const reopen = (steps: readonly Step[]) => ({ type: "reopen" as const, params: { steps } });

/** What is missing at a call, as a refusal says it. */
const notClear = ({ script, step }: Leaf) => refuseFor(({ context, event }) => missing(asked(script, step, context, event.at)));
/** What a call needs before it is entered again. */
const notEntered = ({ script, step }: Leaf) => refuseFor(({ context, event }) => missing(entry(script, step, context, event.at)));
const missing = (found: ReturnType<typeof asked>): Refusal[] => (found ? [found] : []);

const refuseIfPeopleUnder = (script: Script) => ({
  guard: { type: "peopleUnder" as const, params: { script } },
  ...refuse({ why: "peopleUnder" }),
});

/** What every call says to an answer or a waiver: of its own gate, of what is asked, or of a condition; and only to those whom it allows. */
function gateHandlers(leaf: Leaf) {
  const elsewhere = {
    guard: { type: "notAskedHere" as const, params: leaf },
    ...refuseFor(({ event }) => [{ why: "notAskedHere", gate: gateNamed(event) }]),
  };
  const roles = (judged: Judged) => gateSpokenOf(leaf, judged)?.roles ?? [];
  return {
    answer: [
      elsewhere,
      { guard: { type: "mayNotAnswer" as const, params: leaf }, ...refuseFor((judged) => roleRefusal(roles(judged), judged.event)) },
      { guard: { type: "wrongKind" as const, params: leaf }, ...refuseFor(({ event }) => [{ why: "wrongKind", gate: gateNamed(event) }]) },
      { guard: { type: "firstDevice" as const, params: leaf }, ...refuse({ why: "sameDevice" }) },
      {
        guard: "mayNotShow" as const,
        ...refuseFor(({ context, event }) => (event.type === "answer" ? [paperRefusal(context.answers, event)!] : [])),
      },
      { guard: "looksAtPaper" as const, actions: ["see" as const, did("seen")] },
      { actions: [{ type: "answer" as const, params: leaf }, did("answered")] },
    ],
    waive: [
      elsewhere,
      refuseUnlessAllowed,
      {
        guard: { type: "hardGate" as const, params: leaf },
        ...refuseFor(({ event }): Refusal[] => [{ why: "hardGate", gate: gateNamed(event) }]),
      },
      { actions: ["waive" as const, did("waived")] },
    ],
  };
}

/** Down from any call: to the part of the strike that what is on the site asks for. With nothing in the ground the job closes. */
export function standDown(script: Script) {
  const to = (is: string, id: StepId) => {
    const step = script.steps.find((s) => s.id === id)!;
    const leaf: Leaf = { script, step };
    return [
      {
        guard: { type: "comesDownFrom" as const, params: { is, ...leaf } },
        target: `#${stateKey(id)}`,
        actions: [
          { type: "beginAgain" as const, params: leaf },
          { type: "arrive" as const, params: leaf },
          "revise" as const,
          did("standingDown"),
        ],
      },
      { guard: { type: "siteIs" as const, params: { is } }, ...notEntered(leaf) },
    ];
  };
  return [
    refuseUnlessAllowed,
    ...refuseIfHeld,
    refuseIfPeopleUnder(script),
    ...to("raised", STRIKE_FROM.standing),
    ...to("spread", STRIKE_FROM.cloth),
    ...to("staked", STRIKE_FROM.stakes),
    { target: "#closed", actions: ["backToWork" as const, "revise" as const, did("closed")] },
  ];
}

function backFrom(script: Script, at: number) {
  const step = script.steps[at]!;
  const among = behind(script, at);
  if (among.length === 0) return [refuseUnlessAllowed, refuse({ why: "nothingBefore" as const })];
  const goBack = among.map(({ step: before }) => ({
    guard: { type: "mayGoBackTo" as const, params: { script, step: before, among } },
    target: `#${stateKey(before.id)}`,
    actions: [reopen(script.steps.slice(indexOf(script).at.get(before.id), at + 1)), "revise" as const, did("wentBack")],
  }));
  // Those who were counted in stay counted.
  const overCount = step.resumeFrom === step.id || among.some(({ step: before }) => before.resumeFrom === before.id);
  return [
    refuseUnlessAllowed,
    ...refuseIfHeld,
    { guard: { type: "atTheBeginning" as const, params: { id: step.id } }, ...refuse({ why: "nothingBefore" as const }) },
    { guard: "doingAdded" as const, ...refuse({ why: "nothingBefore" as const }) },
    ...(overCount ? [refuseIfPeopleUnder(script)] : []),
    ...goBack,
    refuseFor(({ context, event }) => missing(entry(script, nearest(among, context), context, event.at))),
  ];
}

/** On to the call that follows: by name where lines may be left out on the way. */
function onward(script: Script, at: number) {
  const leaf: Leaf = { script, step: script.steps[at]! };
  const clear = { type: "clear" as const, params: leaf };
  const nexts = ahead(script, at);
  if (nexts.length === 0) return [{ guard: clear, target: "#closed", actions: ["revise" as const, did("closed")] }];
  return nexts.map(({ step: next }) => ({
    guard: nexts.length === 1 ? clear : { type: "clearFor" as const, params: { id: next.id, ...leaf } },
    target: `#${stateKey(next.id)}`,
    actions: [{ type: "arrive" as const, params: { script, step: next } }, "revise" as const, did("moved")],
  }));
}

/** One call of the procedure, as a leaf of the chart. The last candidate of every event refuses, so there is always an answer. */
export function stepState(script: Script, at: number) {
  const step = script.steps[at]!;
  const leaf: Leaf = { script, step };
  const leave = [{ type: "leaveFor" as const, params: leaf }, "revise" as const, did("makingSafe")];
  return install.createStateConfig({
    id: stateKey(step.id),
    on: {
      next: [
        refuseUnlessAllowed,
        ...refuseIfHeld,
        // What an amendment put behind the job is done where it stands.
        { guard: { type: "addedAndClear", params: leaf }, actions: [{ type: "throughAdded", params: leaf }, "revise", did("moved")] },
        ...onward(script, at),
        notClear(leaf),
      ],
      back: backFrom(script, at),
      ...gateHandlers(leaf),
      makeSafe:
        step.phase === "standing"
          ? [{ target: "#safe_standing", actions: leave }]
          : [
              { guard: "raised", target: "#safe_up", actions: leave },
              { target: "#safe_ground", actions: leave },
            ],
    },
  });
}

/** One call of a way out. Its own calls ask nothing; only going on again does. */
export function escapeStep(script: Script, way: readonly Step[], at: number) {
  const step = way[at]!;
  const before = way[at - 1];
  const after = way[at + 1];
  const leaf: Leaf = { script, step };
  const counted: Leaf = { script, step: way.find(({ gate }) => gate)! };
  const goingOn = after
    ? [
        {
          guard: { type: "clear" as const, params: leaf },
          target: `#${stateKey(after.id)}`,
          actions: ["revise" as const, did("moved")],
        },
      ]
    : script.steps.map((s) => ({
        guard: { type: "goesOnHere" as const, params: { id: s.id, ...leaf } },
        target: `#${stateKey(s.id)}`,
        actions: ["backToWork" as const, "revise" as const, did("goingOn")],
      }));
  return install.createStateConfig({
    id: stateKey(step.id),
    on: {
      next: [refuseUnlessAllowed, ...refuseIfHeld, ...goingOn, notClear(leaf)],
      back: before
        ? [
            refuseUnlessAllowed,
            ...refuseIfHeld,
            { target: `#${stateKey(before.id)}`, actions: [reopen([before, step]), "revise", did("wentBack")] },
          ]
        : [refuseUnlessAllowed, refuse({ why: "nothingBefore" })],
      ...gateHandlers(leaf),
      // Whoever was under is out and counted before anything else is begun.
      standDown: [refuseUnlessAllowed, ...refuseIfHeld, { guard: { type: "notCountedOut", params: counted }, ...notClear(counted) }],
      // From the first call again: something else has gone wrong. Where going on starts does not change.
      makeSafe: [{ target: `#${stateKey(way[0]!.id)}`, actions: [reopen(way), "revise", did("makingSafe")] }],
    },
  });
}
