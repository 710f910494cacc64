import type { Brief, Role } from "../../machines/install/brief.ts";
import type { Intent } from "../../machines/install/commands.ts";
import { decide } from "../../machines/install/decide.ts";
import type { Value } from "../../machines/install/gates.ts";
import type { Instant } from "../../machines/install/ids.ts";
import { currentStep, type Job, missingNow, openJob, questionAt } from "../../machines/install/job.ts";
import type { CommandEntry, Entry } from "../../machines/record/entry.ts";
import { commandOf, frozenOf, HOUR, SECOND, START } from "../proof/fixtures.ts";
import { goodValue } from "./answers.ts";

/** A job with the entries that a record of it holds, except for their hashes: neither server nor journal, so it is quick. */
export class KeptJob {
  job: Job;
  at: Instant = START;
  entries: Entry[];
  constructor(brief: Brief) {
    const opened = frozenOf(brief);
    this.job = openJob(opened, START);
    this.entries = [{ kind: "opening", no: 1, at: START, wall: START, opened, ...this.where() } as unknown as Entry];
  }
  /** The same job, to be played on another way. */
  fork(): KeptJob {
    const fork: KeptJob = Object.create(KeptJob.prototype);
    return Object.assign(fork, { job: this.job, at: this.at, entries: [...this.entries] });
  }
  readonly earlier = (no: number): Entry | undefined => this.entries[no - 1];
  get call() {
    return currentStep(this.job)?.id ?? "closed";
  }
  get answers() {
    return this.job.snapshot.context.answers;
  }
  say(ask: Intent, role: Role = "lead", afterMs = SECOND): CommandEntry {
    this.at += afterMs;
    const no = this.entries.length + 1;
    const command = commandOf(ask, this.at, no, no - 1, role);
    const [job, outcome] = decide(this.job, command);
    this.job = job;
    const entry = { kind: "command", no, at: this.at, wall: this.at, command, outcome, ...this.where() } as unknown as CommandEntry;
    this.entries.push(entry);
    return entry;
  }
  answer(gate: string, value: Value, role: Role = "lead"): CommandEntry {
    return this.say({ type: "answer", gate, value }, role);
  }
  wind(gustMph: number): CommandEntry {
    return this.say({ type: "reading", reading: { kind: "wind", mph: 4, gustMph, takenAt: this.at, fromDeg: null, place: null } });
  }
  /** What is asked, answered well by whom it allows; "next" where nothing is. */
  goOn(): CommandEntry {
    const asked = missingNow(this.job, this.at + SECOND);
    if (asked?.gate === undefined) return this.say({ type: "next" });
    const { check, secondPersonTo } = questionAt(this.job, this.at + SECOND)!.gate;
    if (check.kind === "wind") return this.wind(8);
    if (check.kind === "quiet") return this.say({ type: "note", text: "quiet again" }, "lead", HOUR);
    return this.answer(asked.gate, goodValue(check), secondPersonTo ? "deputy" : "lead");
  }
  /** On until it stands at a call. */
  to(id: string): this {
    return this.until(() => this.call === id);
  }
  until(stop: () => boolean): this {
    for (let n = 0; !stop(); n++) {
      if (n > 2000 || this.call === "closed") throw new Error(`never came there; stands at ${this.call}`);
      const { outcome } = this.goOn();
      if ("refused" in outcome) throw new Error(`${this.call}: ${JSON.stringify(outcome)}`);
    }
    return this;
  }
  private where() {
    const step = currentStep(this.job);
    return { phase: step?.phase ?? "closed", step: step?.id ?? "closed" };
  }
}

/** What an entry did, and then did; or why it was refused. */
export const went = ({ outcome }: CommandEntry) =>
  "did" in outcome ? [outcome.did, outcome.and].filter((did) => did !== undefined) : outcome.refused;
