import type { Brief, Role } from "../../machines/install/brief.ts";
import type { Intent } from "../../machines/install/commands.ts";
import { decide } from "../../machines/install/decide.ts";
import { currentStep, type Job } from "../../machines/install/job.ts";
import type { Outcome } from "../../machines/install/refusals.ts";
import { briefOf, commandOf, opened, SECOND, SMALL, START } from "../proof/fixtures.ts";
import { badValue, goodValue } from "./answers.ts";

/** A crew at work: says things to the guide, one second apart unless told otherwise, and looks at where it stands. */
export class Crew {
  job: Job;
  at = START;
  entry = 1;
  constructor(brief: Brief = briefOf(SMALL)) {
    this.job = opened(brief);
  }
  get revision() {
    return this.job.snapshot.context.revision;
  }
  get call() {
    return currentStep(this.job)?.id ?? "closed";
  }
  say(ask: Intent, role: Role = "lead", { seen = this.revision, at }: { seen?: number; at?: number } = {}): Outcome {
    this.at = at ?? this.at + SECOND;
    const [job, outcome] = decide(this.job, commandOf(ask, this.at, this.entry++, seen, role));
    this.job = job;
    return outcome;
  }
  gust(mph: number, role: Role = "lead") {
    return this.say({ type: "reading", reading: { kind: "wind", mph: 5, gustMph: mph, takenAt: this.at, place: "the field" } }, role);
  }
  answer(how: "good" | "bad", role?: Role) {
    const gate = currentStep(this.job)!.gate!;
    const value = how === "good" ? goodValue(gate.check) : badValue(gate.check);
    return this.say({ type: "answer", gate: gate.id, value }, role ?? (gate.secondPersonTo ? "deputy" : "lead"));
  }
  next(role: Role = "lead") {
    return this.say({ type: "next" }, role);
  }
  /** Does every call as it should be done until it stands at this one. */
  goTo(id: string) {
    for (let i = 0; this.call !== id; i++) {
      if (i > 500 || this.call === "closed") throw new Error(`never came to ${id}`);
      const { gate } = currentStep(this.job)!;
      if (gate?.check.kind === "wind") this.gust(8);
      else if (gate) this.answer("good");
      const outcome = this.next();
      if (!("did" in outcome)) throw new Error(`${this.call}: ${JSON.stringify(outcome)}`);
    }
    return this;
  }
}
