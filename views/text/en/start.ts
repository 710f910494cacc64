import type { Failure } from "../../../machines/record/storage.ts";
import { notRecordedText } from "./errors.ts";
import { https } from "./https.ts";

/** What the program says when it starts, or why it does not. One sentence each. */
export const start = {
  badDays: (name: string, given: string, from: number) =>
    `${name} is "${given.slice(0, 20)}"; give whole days, ${from} or more, or leave it out to keep all for good.`,
  trials: "For trials: anybody answers as anybody, and every page says so. Nothing on it is a real job.",
  office: (link: string, passphrase: string | null) =>
    passphrase === null
      ? `Into the office, once: ${link}`
      : `The office's passphrase is ${passphrase}. Write it down: it isn't shown again.\nInto the office without it, once: ${link}`,
  listening: (address: string, file: string) => `Ridgecall is up: ${address} (data in ${file}). Stop it with Ctrl-C.`,
  notAFile: (file: string) => `The data file ${file} is not a file; name another one with RIDGECALL_FILE.`,
  emptyFile: (file: string) =>
    `The data file ${file} is empty, which a data file of ours never is; put your copy of it back, or move it away to start a new one.`,
  notOurs: (file: string) =>
    `The file ${file} is not a Ridgecall data file, or its beginning is damaged; name another one with RIDGECALL_FILE, or put your last copy in its place.`,
  damaged: (file: string) =>
    `The data file ${file} is damaged and was left as it is; move it away, with any -wal or -journal file beside it, and put your last copy in its place.`,
  logAlone: (file: string, log: string) =>
    `The data file ${file} is missing, but ${log} with its last entries is there; put the data file back beside it, or move that away to start a new one.`,
  newer: (file: string, has: number, knows: number) =>
    `The data file ${file} was written by a newer version (layout ${has}, this one knows ${knows}); update, or open it where it was written.`,
  inUse: (file: string) => `The data file ${file} is in use by another Ridgecall; stop that one first.`,
  cannotOpen: (file: string, why: string) =>
    `The data file ${file} cannot be opened (${why}); check the path and that you may write there.`,
  portTaken: (port: number) => `Port ${port} is taken; stop what uses it, or choose another with PORT.`,
  badPort: (port: string) => `PORT is "${port}"; give a number from 0 to 65535.`,
  badWakeWord: (word: string) => `RIDGECALL_WAKE_WORD is "${word}"; give one word of 5 to 20 letters.`,
  halfTls: "For https name both RIDGECALL_CERTIFICATE and RIDGECALL_KEY, each a file in PEM.",
  badTls: (file: string, why: string) =>
    `The certificate or key in ${file} cannot be used (${why}); give files in PEM that belong together.`,
  unknownArgument: (argument: string) => `"${argument}" is not known here; the arguments are --https and --trials, after npm start --.`,
  noHouseEntry: (failure: Failure) =>
    `${notRecordedText(failure)} The house stream has no entry of today yet; it is tried again each minute.`,
  https,
};
