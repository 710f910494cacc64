import type { Context, MiddlewareHandler } from "hono";
import type { LightningFacts } from "../../views/parts/lightning-facts.ts";
import { lightningFacts } from "../../views/parts/lightning-state.ts";
import type { LiveJobs } from "../jobs.ts";

declare module "hono" {
  interface ContextVariableMap {
    /** The lightning clock of the job that a request is about; asked for by pages alone. */
    lightning: () => Promise<LightningFacts | null>;
  }
}

/** Every page of a job has its lightning clock, whatever else is on it. */
export const withLightning =
  (jobs: LiveJobs): MiddlewareHandler =>
  async (c, next) => {
    c.set("lightning", () => lightningOn(c, jobs));
    await next();
  };

async function lightningOn(c: Context, jobs: LiveJobs): Promise<LightningFacts | null> {
  const id = /^\/jobs\/([\w-]+)/.exec(c.req.path)?.[1];
  const live = id === undefined ? null : await jobs.load(id).catch(() => null);
  return live && lightningFacts(live.job, live.now.at, c.get("words"));
}
