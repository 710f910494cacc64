import type { Brief, Role } from "../../machines/install/brief.ts";
import type { CommandSource, Intent } from "../../machines/install/commands.ts";
import { decide } from "../../machines/install/decide.ts";
import type { Check, Value } from "../../machines/install/gates.ts";
import { currentStep } from "../../machines/install/job.ts";
import { workOf } from "../../machines/install/quantities.ts";
import { indexOf } from "../../machines/install/script-index.ts";
import type { Frozen } from "../../machines/install/step.ts";
import type { Doubt, DoubtKind } from "../../machines/record/doubts/doubt.ts";
import { doubtsIn } from "../../machines/record/doubts/doubts.ts";
import type { Entries } from "../../machines/record/entries.ts";
import type { CommandEntry } from "../../machines/record/entry.ts";
import { estimate } from "../../machines/time/estimate.ts";
import { TIMED_PHASES } from "../../machines/time/rates.ts";
import { sharesOf } from "../../machines/time/shares.ts";
import { briefOf, commandOf, MIDDLE, MINUTE, SECOND } from "../proof/fixtures.ts";
import { KeptJob } from "../support/kept-job.ts";

/** The job that doubts are looked for in: known ground and no lines overhead, so that nothing takes a paper. */
export const plainBrief = (more: Partial<Brief> = {}): Brief => ({
  ...briefOf(MIDDLE, { site: { soilKnown: true, overheadKv: [] } }),
  ...more,
});

type How = {
  readonly role?: Role;
  readonly afterMs?: number;
  readonly doubtMs?: number;
  readonly device?: string;
  readonly source?: CommandSource;
  /** How far the wall clock was set ahead of the job's own time. */
  readonly aheadMs?: number;
};

/** A kept job whose crew takes its time: so long for each thing it says, and measures with what comes out. */
export class PacedJob extends KeptJob {
  /** How long each thing takes. */
  pauseMs: number | (() => number) = MINUTE;
  /** What is answered where something is measured; as the guide wants it, unless said otherwise. */
  measures: (check: Check, value: Value) => Value = (_, value) => value;

  constructor(brief: Brief = plainBrief()) {
    super(brief);
  }
  static playedBy(pauseMs: PacedJob["pauseMs"], brief: Brief = plainBrief()): PacedJob {
    const job = new PacedJob(brief);
    job.pauseMs = pauseMs;
    return job.until(() => job.call === "closed");
  }
  override fork(): PacedJob {
    const { job, at, pauseMs, measures, entries } = this;
    return Object.assign(Object.create(PacedJob.prototype) as PacedJob, { job, at, pauseMs, measures, entries: [...entries] });
  }
  override goOn(): CommandEntry {
    this.at += (typeof this.pauseMs === "number" ? this.pauseMs : this.pauseMs()) - SECOND;
    return super.goOn();
  }
  override until(stop: () => boolean): this {
    for (let n = 0; !stop(); n++) {
      const { outcome } = this.goOn();
      if (n > 2000 || "refused" in outcome) throw new Error(`${this.call}: ${JSON.stringify(outcome)}`);
    }
    return this;
  }
  override answer(gate: string, value: Value, role: Role = "lead"): CommandEntry {
    const { check } = indexOf(this.job.frozen.script).gates.get(gate)!;
    return super.answer(gate, this.measures(check, value), role);
  }
  /** Said in a way of its own: on another phone, by voice, or with the clock in doubt. */
  tell(ask: Intent, { role = "lead", afterMs = SECOND, doubtMs = 0, aheadMs = 0, ...more }: How = {}): CommandEntry {
    this.at += afterMs;
    const no = this.entries.length + 1;
    const wall = this.at + aheadMs;
    const command = { ...commandOf(ask, this.at, no, no - 1, role), wall, doubtMs, ...more };
    const [job, outcome] = decide(this.job, command);
    this.job = job;
    const step = currentStep(job);
    const where = { phase: step?.phase ?? "closed", step: step?.id ?? "closed" };
    const entry = { kind: "command", no, at: this.at, wall, command, outcome, ...where } as unknown as CommandEntry;
    this.entries.push(entry);
    return entry;
  }
  get record(): Entries {
    return this.entries.map((entry) => ({ entry })) as unknown as Entries;
  }
  doubts(kind: DoubtKind): readonly Doubt[] {
    return doubtsIn(this.record).filter((doubt) => doubt.kind === kind);
  }
}

/** The planned time of each call of a job, in milliseconds: its share of its phase, and 20 s at least. */
export function plannedMs(frozen: Frozen): ReadonlyMap<string, number> {
  const { quantities, people } = workOf(frozen)!;
  return new Map(
    TIMED_PHASES.flatMap((phase) => {
      const planned = estimate(phase, quantities, people);
      if (planned.is === "tooFew") throw new Error(`too few for ${phase}`);
      const steps = frozen.script.steps.filter((s) => s.phase === phase);
      return sharesOf(steps, planned).map((share, i) => [steps[i]!.id, Math.max(20 * SECOND, share * planned.minutes * MINUTE)] as const);
    }),
  );
}
