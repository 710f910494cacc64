import { restoreFrom } from "./backup/restore-from.ts";
import { readConfig } from "./config.ts";

const { file } = readConfig({ RIDGECALL_FILE: process.env.RIDGECALL_FILE }, []);
process.exitCode = restoreFrom(process.argv.slice(2), file, { print: console.log, complain: console.error });
