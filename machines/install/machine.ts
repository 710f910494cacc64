import { did, refuse, refuseFor, refuseUnlessAllowed, roleRefusal } from "./outcomes.ts";
import { mayAsk } from "./rights.ts";
import { install } from "./setup.ts";
import type { JobState } from "./state.ts";
import { stateKey } from "./state-key.ts";
import type { EscapeId, Frozen, PhaseId, Script } from "./step.ts";
import { escapeStep, standDown, stepState } from "./step-state.ts";
import { isWatchedByOthers } from "./watched.ts";
import { weatherLimits } from "./weather.ts";

/** Events of the procedure that a closed job refuses. */
const CLOSED = [
  "next",
  "back",
  "answer",
  "waive",
  "makeSafe",
  "standDown",
  "amend",
  "agree",
  "disagree",
  "outOfUse",
  "backInUse",
  "found",
] as const;

/** Where the weather comes to stand, with what else is done. */
const verdicts = <A extends readonly unknown[]>(actions: A) =>
  (["unknown", "workable", "caution", "stop"] as const).map((is) => ({
    guard: { type: "weatherIs" as const, params: { is } },
    target: `.${is}` as const,
    actions,
  }));

/**
 * The chart of one job: phases and ways out by hand, calls from its script. Three regions; `procedure` is left by
 * nothing, so a hold needs no memory of where it was. A hold on a hold starts the count over: a "carry on" that was on its way is
 * too old for it.
 */
function installMachine(script: Script, limits: JobState["limits"]) {
  const phase = (id: PhaseId) => {
    const steps = script.steps.filter((s) => s.phase === id);
    const states = steps.map((s) => [stateKey(s.id), stepState(script, script.steps.indexOf(s))] as const);
    return install.createStateConfig({ initial: stateKey(steps[0]!.id), states: Object.fromEntries(states) });
  };
  const strike = { ...phase("struck"), on: { standDown: [refuseUnlessAllowed, refuse({ why: "alreadyStandingDown" })] } };
  const way = (id: EscapeId) => {
    const steps = script.escapes[id];
    const states = steps.map((s, i) => [stateKey(s.id), escapeStep(script, steps, i)] as const);
    return install.createStateConfig({ id: `safe_${id}`, initial: stateKey(steps[0]!.id), states: Object.fromEntries(states) });
  };

  return install.createMachine({
    type: "parallel",
    context: {
      revision: 0,
      lastAt: 0,
      wallAheadMs: 0,
      heldBy: null,
      hurt: null,
      limits,
      site: script.steps[0]!.site,
      startedFrom: script.steps[0]!.id,
      resumeAt: null,
      sessionAt: 0,
      answers: {},
      waived: {},
      reopened: {},
      added: [],
      doing: null,
      outOfUse: {},
      wind: null,
      thunderAt: null,
      proposed: null,
    },
    states: {
      procedure: {
        initial: "utilitiesMarked",
        states: {
          utilitiesMarked: phase("utilitiesMarked"),
          anchorsSet: phase("anchorsSet"),
          sectionsJoined: phase("sectionsJoined"),
          perimeterRaised: phase("perimeterRaised"),
          interiorRaised: phase("interiorRaised"),
          tensioned: phase("tensioned"),
          inspected: phase("inspected"),
          standing: phase("standing"),
          struck: strike,
          makingSafe: { initial: "ground", states: { ground: way("ground"), up: way("up"), standing: way("standing") } },
          closed: { id: "closed", on: Object.fromEntries(CLOSED.map((e) => [e, refuse({ why: "jobClosed" })])) },
        },
        on: {
          standDown: standDown(script),
          amend: [refuseUnlessAllowed, { actions: ["propose", did("proposed")] }],
          agree: [
            { guard: "noSuchProposal", ...refuse({ why: "noProposal" }) },
            { guard: "sameAsProposer", ...refuse({ why: "sameAsProposer" }) },
            refuseUnlessAllowed,
            // Nothing takes the guide away from people under a load: it waits for the count out.
            { guard: { type: "peopleUnder", params: { script } }, ...refuse({ why: "peopleUnder" }) },
            { actions: ["revise", "settle", did("amended")] },
          ],
          disagree: [
            { guard: "noSuchProposal", ...refuse({ why: "noProposal" }) },
            refuseUnlessAllowed,
            { actions: ["settle", did("discarded")] },
          ],
          // What can only stop is taken from anybody, and is new to every screen.
          outOfUse: { actions: ["takeOut", "revise", did("outOfUse")] },
          // A change that waits was made for the site as it was known before.
          found: [refuseUnlessAllowed, { actions: ["revise", "settle", did("found")] }],
          backInUse: [
            refuseUnlessAllowed,
            { guard: "notOutOfUse", ...refuseFor(({ event }) => ("thing" in event ? [{ why: "notOutOfUse", thing: event.thing }] : [])) },
            { actions: ["putBack", did("backInUse")] },
          ],
        },
      },
      weather: {
        initial: "unknown",
        states: { unknown: {}, workable: {}, caution: {}, stop: {} },
        // On the region: a handler on the root is dropped where a region handles the same event.
        on: {
          clock: verdicts(["passTime"] as const),
          reading: [
            {
              guard: { type: "readingByWhoMayNot", params: { script } },
              ...refuseFor(({ event }) => roleRefusal(mayAsk("reading"), event)),
            },
            { guard: "readingInALee", ...refuse({ why: "inALee" }) },
            { guard: "readingFromTheFuture", ...refuse({ why: "future" }) },
            { guard: { type: "readingOlder", params: { script } }, ...refuse({ why: "olderReading" }) },
            { guard: "noThunderNear", ...refuse({ why: "noThunderNear" }) },
            ...(isWatchedByOthers(script)
              ? [
                  {
                    guard: { type: "onlyWatches" as const, params: { script } },
                    actions: [{ type: "watchOver" as const, params: { script } }, did("watched")],
                  },
                ]
              : []),
            ...verdicts([{ type: "read", params: { script } }, did("read")] as const),
          ],
        },
      },
      attention: {
        initial: "working",
        states: {
          working: {
            on: {
              hold: { target: "held", actions: ["hold", did("held")] },
              pause: { target: "paused", actions: ["hold", did("paused")] },
              carryOn: [refuseUnlessAllowed, refuse({ why: "notHeld" })],
            },
          },
          paused: {
            on: {
              hold: { target: "held", actions: ["hold", did("held")] },
              pause: { actions: ["hold", did("paused")] },
              carryOn: [refuseUnlessAllowed, { target: "working", actions: ["carryOn", did("carriedOn")] }],
            },
          },
          held: {
            on: {
              hold: { actions: ["hold", did("held")] },
              pause: { actions: ["hold", did("held")] },
              carryOn: [
                refuseUnlessAllowed,
                { guard: "hurtAndSilent", ...refuse({ why: "sayWhatBecame" }) },
                { target: "working", actions: ["carryOn", did("carriedOn")] },
              ],
            },
          },
        },
        on: {
          note: [refuseUnlessAllowed, { actions: did("noted") }],
          photo: [refuseUnlessAllowed, { actions: did("photographed") }],
          unfitPhoto: [
            refuseUnlessAllowed,
            refuseFor(({ event }) => (event.type === "unfitPhoto" ? [{ why: "noPhoto", unfit: event.unfit }] : [])),
          ],
          // A change that waits was made for the job as it was led before.
          takeLead: [refuseUnlessAllowed, { actions: ["settle", did("tookLead")] }],
          hurt: [
            { guard: "hurt", ...refuseFor(({ context }) => [{ why: "alreadyHurt", by: context.hurt!.by }]) },
            { target: ".held", actions: ["hold", "hurt", did("hurt")] },
          ],
          questionChanged: { actions: "revise" },
        },
      },
    },
  });
}
export type Machine = ReturnType<typeof installMachine>;

const machines = new WeakMap<Frozen, Machine>();
/** The chart of a frozen job. Made once for each: an amendment that is proposed, agreed to and replayed needs it every time. */
export function machineOf(frozen: Frozen): Machine {
  const known = machines.get(frozen);
  if (known) return known;
  const machine = installMachine(frozen.script, weatherLimits(frozen.limits));
  machines.set(frozen, machine);
  return machine;
}
