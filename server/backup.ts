import { constants, setPriority } from "node:os";
import { backUp } from "./backup/back-up.ts";
import { readConfig } from "./config.ts";

// Whoever calls "hold" meanwhile goes first.
setPriority(constants.priority.PRIORITY_LOW);
const { file } = readConfig({ RIDGECALL_FILE: process.env.RIDGECALL_FILE }, []);
process.exitCode = backUp(process.argv.slice(2), file, { print: console.log, complain: console.error });
