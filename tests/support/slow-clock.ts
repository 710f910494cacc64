import os from "node:os";

/**
 * Loaded before the program (`--import`): its clocks go slowly, from now on or from the time that `SLOW_CLOCK_FROM` names.
 * Nothing that it gives people time for, a read-back or a wind reading, is over before a test on a slow machine comes to it.
 */
const TIMES_SLOWER = 50;
const real = { now: Date.now, uptime: os.uptime };
const start = { now: real.now(), uptime: real.uptime() };
const from = Number(process.env.SLOW_CLOCK_FROM ?? start.now);

Date.now = () => from + Math.floor((real.now() - start.now) / TIMES_SLOWER);
os.uptime = () => start.uptime + (real.uptime() - start.uptime) / TIMES_SLOWER;
