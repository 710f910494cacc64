import type { Context, MiddlewareHandler } from "hono";
import type { LightningFacts } from "../../views/parts/lightning-facts.ts";
import { lightningFacts } from "../../views/parts/lightning-state.ts";
import { type ThunderAt, thunderOf } from "../../views/parts/thunder-elsewhere.tsx";
import { isOffice } from "../access/visitor.ts";
import type { Dependencies, LiveJobs } from "../jobs.ts";

declare module "hono" {
  interface ContextVariableMap {
    /** The lightning clock of the job that a request is about; asked for by pages alone. */
    lightning: () => Promise<LightningFacts | null>;
    /** Jobs on which thunder stops work; asked for by pages that are of none. */
    thunderElsewhere: () => Promise<readonly ThunderAt[]>;
  }
}

/** Every page of a job has its lightning clock, whatever else is on it. */
export const withLightning =
  (jobs: LiveJobs): MiddlewareHandler =>
  async (c, next) => {
    c.set("lightning", () => lightningOn(c, jobs));
    await next();
  };

/** Pages of the office that are of no job say at which of them there is thunder, as the list of jobs does. */
export const withThunderElsewhere =
  ({ journal, clock }: Pick<Dependencies, "journal" | "clock">): MiddlewareHandler =>
  async (c, next) => {
    if (isOffice(c.get("visitor")))
      c.set("thunderElsewhere", async () =>
        thunderOf(
          (await journal.folds()).map(({ fold }) => fold),
          clock().wall,
          c.get("words"),
        ),
      );
    await next();
  };

async function lightningOn(c: Context, jobs: LiveJobs): Promise<LightningFacts | null> {
  const id = /^\/jobs\/([\w-]+)/.exec(c.req.path)?.[1];
  const live = id === undefined ? null : await jobs.load(id).catch(() => null);
  return live && lightningFacts(live.job, live.now.at, c.get("words"));
}
