import type { Brief, Role } from "../../machines/install/brief.ts";
import type { Intent } from "../../machines/install/commands.ts";
import { decide } from "../../machines/install/decide.ts";
import type { Gate } from "../../machines/install/gates.ts";
import type { GateId } from "../../machines/install/ids.ts";
import { currentStep, type Job, missingNow } from "../../machines/install/job.ts";
import { machineOf } from "../../machines/install/machine.ts";
import type { Outcome } from "../../machines/install/refusals.ts";
import { indexOf } from "../../machines/install/script-index.ts";
import type { Frozen, Script } from "../../machines/install/step.ts";
import { briefOf, commandOf, MINUTE, opened, PEOPLE, SECOND, SMALL, START } from "../proof/fixtures.ts";
import { badValue, goodValue } from "./answers.ts";

/** A crew at work: says things to the guide, one second apart unless told otherwise, and looks at where it stands. */
export class Crew {
  job: Job;
  at = START;
  entry = 1;
  /** Where everything is said; `null` where each has a phone of their own. */
  phone: string | null = null;
  constructor(brief: Brief = briefOf(SMALL)) {
    this.job = opened(brief);
  }
  /** The same job as if it had been frozen with another script. */
  onScript(script: Script) {
    const frozen = { ...this.job.frozen, script };
    const machine = machineOf(frozen);
    const { value, context } = this.job.snapshot;
    this.job = { ...this.job, frozen, machine, snapshot: machine.resolveState({ value, context }) };
  }
  get revision() {
    return this.job.snapshot.context.revision;
  }
  get call() {
    return currentStep(this.job)?.id ?? "closed";
  }
  /** What "next" would ask for now; `null` where it leads on. */
  get missing(): GateId | null {
    return missingNow(this.job, this.at + SECOND)?.gate ?? null;
  }
  say(ask: Intent, role: Role = "lead", { seen = this.revision, at }: { seen?: number; at?: number } = {}): Outcome {
    this.at = at ?? this.at + SECOND;
    const command = commandOf(ask, this.at, this.entry++, seen, role);
    const [job, outcome] = decide(this.job, this.phone === null ? command : { ...command, device: this.phone });
    this.job = job;
    return outcome;
  }
  /** Time passes until somebody notes something; some of it may not have. */
  pass(ms: number, { doubtMs }: { doubtMs: number }) {
    this.at += ms;
    const note = commandOf({ type: "note", text: "tea" }, this.at, this.entry++, this.revision);
    [this.job] = decide(this.job, { ...note, doubtMs });
  }
  gust(mph: number, role: Role = "lead") {
    const reading = { kind: "wind", mph: Math.min(5, mph), gustMph: mph, takenAt: this.at, fromDeg: null, place: "the field" } as const;
    return this.say({ type: "reading", reading }, role);
  }
  thunder(role: Role = "lead") {
    return this.say({ type: "reading", reading: { kind: "thunder", takenAt: this.at } }, role);
  }
  gate(id: GateId): Gate {
    return indexOf(this.job.frozen.script).gates.get(id)!;
  }
  /** Answers what is asked, or the gate that is named. */
  answer(how: "good" | "bad", role?: Role, id: GateId = this.missing ?? currentStep(this.job)!.gate!.id) {
    const gate = this.gate(id);
    const value = how === "good" ? goodValue(gate.check) : badValue(gate.check);
    return this.say({ type: "answer", gate: gate.id, value }, role ?? this.#answerer(gate));
  }
  /** Somebody other than who answered first, or showed the paper. */
  #answerer({ id, secondPersonTo }: Gate): Role {
    const { answers } = this.job.snapshot.context;
    const shown = answers[id]?.value.kind === "paper" && !answers[id].seen ? answers[id].by : null;
    const first = shown ?? answers[secondPersonTo ?? ""]?.by;
    return first === PEOPLE.lead ? "deputy" : "lead";
  }
  next(role: Role = "lead") {
    return this.say({ type: "next" }, role);
  }
  /** Does all that is asked, as it should be done, until it stands at this call. */
  goTo(id: string) {
    for (let i = 0; this.call !== id; i++) {
      if (i > 900 || this.call === "closed") throw new Error(`never came to ${id}`);
      const outcome = this.oneMore();
      if (!("did" in outcome)) throw new Error(`${this.call}: ${JSON.stringify(outcome)}`);
    }
    return this;
  }
  /** Answers until nothing is missing where the job stands, and goes no further: the work of the next call may begin. */
  ready() {
    const here = this.call;
    for (let i = 0; this.missing !== null && this.call === here; i++) {
      if (i > 30) throw new Error(`never ready at ${this.call}`);
      const check = this.gate(this.missing).check.kind;
      this.say({ type: "hold" });
      if (check === "wind") this.gust(8);
      else if (check === "quiet") this.at += 31 * MINUTE;
      else this.answer("good");
      this.say({ type: "carryOn", became: null });
    }
    return this;
  }
  /** The answer to what is missing, or "next". */
  oneMore(): Outcome {
    if (this.missing === null) return this.next();
    const { kind } = this.gate(this.missing).check;
    if (kind === "quiet") return this.say({ type: "next" }, "lead", { at: this.at + 31 * MINUTE });
    return kind === "wind" ? this.gust(8) : this.answer("good");
  }
  /** The plan is changed, and somebody else agrees. */
  amend(to: Frozen, because = "the sheet came") {
    const target = this.entry;
    this.say({ type: "amend", because, to });
    return this.say({ type: "agree", target }, "competent");
  }
}
