import { verifyRecords } from "./verify-records.ts";

process.exitCode = verifyRecords(process.argv.slice(2), { print: console.log, complain: console.error });
