import os from "node:os";
import type { Clocks } from "../machines/install/moment.ts";

/** This machine's clocks. The time since it was started goes on while it sleeps, which that of the process need not. */
export const systemClock = (): Clocks => ({ wall: Date.now(), elapsedMs: Math.round(os.uptime() * 1000) });
