import type { Context } from "hono";
import { type HurtState, hurtState } from "../../views/parts/hurt-state.ts";
import type { LiveJobs } from "../jobs.ts";

/** Whether somebody is hurt on the job that a request is about, for the page that answers it. */
export const hurtOn = async (c: Context, jobs: LiveJobs): Promise<HurtState | null> =>
  hurtState(await jobs.load(c.req.param("id")!), c.get("words"));
