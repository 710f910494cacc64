import { type ActorScope, createActor } from "xstate";
import type { Snapshot } from "./job.ts";
import type { Machine } from "./machine.ts";
import type { Event } from "./setup.ts";

type Scope = ActorScope<Snapshot, Event>;
type Effect = { readonly type: string; readonly params: unknown };

const scopes = new WeakMap<Machine, Scope>();
const nothing = () => {};

/**
 * The chart's next snapshot for an event, with the actions that it asks for and does not run: XState's `transition()`,
 * which makes and starts a new actor for every event. That takes longer than the event itself. Nothing here is kept in
 * the actor, so that one serves a machine for good.
 */
export function transition(machine: Machine, snapshot: Snapshot, event: Event): [Snapshot, Effect[]] {
  const effects: Effect[] = [];
  const scope = scopeOf(machine);
  const next = machine.transition(snapshot, event, { ...scope, actionExecutor: (action: Effect) => effects.push(action) } as never);
  return [next, effects];
}

function scopeOf(machine: Machine): Omit<Scope, "actionExecutor"> {
  const known = scopes.get(machine);
  if (known) return known;
  const self = createActor(machine);
  const scope = {
    self,
    system: self.system,
    id: "",
    sessionId: "",
    logger: nothing,
    defer: nothing,
    emit: nothing,
    stopChild: nothing,
    actionExecutor: nothing,
  } as unknown as Scope;
  scopes.set(machine, scope);
  return scope;
}
