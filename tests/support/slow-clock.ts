/**
 * Loaded before the program (`--import`): its clock goes slowly, from now on. Nothing that it gives people time for, a
 * read-back or a wind reading, is over before a test on a slow machine comes to it.
 */
const TIMES_SLOWER = 50;
const real = Date.now;
const start = real();

Date.now = () => start + Math.floor((real() - start) / TIMES_SLOWER);
