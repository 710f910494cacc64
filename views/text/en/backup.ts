/** What `npm run backup` says. One sentence each; `source` is about the data file that is copied. */
export const backup = {
  usage: "Name one new file for the backup: npm run backup -- FILE.",
  source: {
    missing: (file: string) => `There is no data file ${file} to back up; name yours with RIDGECALL_FILE.`,
    logAlone: (file: string, log: string) =>
      `The data file ${file} is missing, but ${log} with its last entries is there; put the data file back beside it first.`,
    notAFile: (file: string) => `The data file ${file} is not a file; name yours with RIDGECALL_FILE.`,
    empty: (file: string) => `The data file ${file} is empty, so there is nothing to back up; name yours with RIDGECALL_FILE.`,
    notOurs: (file: string) =>
      `The file ${file} is not a Ridgecall data file, or its beginning is damaged; name yours with RIDGECALL_FILE.`,
    newer: (file: string, has: number, knows: number) =>
      `The data file ${file} was written by a newer version (layout ${has}, this one knows ${knows}); back it up with the version that wrote it.`,
    damaged: (file: string) =>
      `The data file ${file} is damaged, so no backup was made; stop the server, and restore your last backup: npm run restore -- BACKUP.`,
    unreadable: (file: string, why: string) => `The data file ${file} cannot be read (${why}); check the path and that you may read it.`,
  },
  taken: (file: string) => `${file} is there already, and a backup never replaces anything; name a new file.`,
  partOf: (file: string, whole: string) => `${file} would be taken for a part of ${whole}; name another file.`,
  doesNotHold: (file: string) =>
    `Not every job holds: ${file} is a copy of what is there all the same, to be kept as evidence, and cannot be restored.`,
} as const;

/** What `npm run restore` says. One sentence each; `source` is about the backup. */
export const restore = {
  usage: "Name one backup: npm run restore -- BACKUP.",
  source: {
    missing: (file: string) => `There is no backup ${file}; check the path.`,
    logAlone: (file: string, log: string) =>
      `The backup ${file} is missing, but ${log} with its last entries is there; put the two together first.`,
    notAFile: (file: string) => `The backup ${file} is not a file; name the file itself.`,
    empty: (file: string) => `The backup ${file} is empty; use another one.`,
    notOurs: (file: string) => `${file} is not a Ridgecall data file, or its beginning is damaged; use another backup.`,
    newer: (file: string, has: number, knows: number) =>
      `The backup ${file} was written by a newer version (layout ${has}, this one knows ${knows}); update first.`,
    damaged: (file: string) => `The backup ${file} is damaged, and nothing was changed; use another one.`,
    unreadable: (file: string, why: string) => `The backup ${file} cannot be read (${why}); check the path and that you may read it.`,
  },
  doesNotHold: (file: string) => `Not every job in ${file} holds, and nothing was changed; use an earlier backup.`,
  inUse: (file: string) => `The data file ${file} is in use, and nothing was changed; stop the server that holds it first.`,
  notAFile: (file: string) => `${file}, where the data file would go, is not a file; name another one with RIDGECALL_FILE.`,
  movedAside: (aside: string) => `What was there before lies at ${aside}.`,
  onlyMovedAside: (file: string, aside: string) =>
    `Nothing was restored, as something else took the place of ${file} meanwhile; what was there before lies at ${aside}.`,
} as const;

const number = new Intl.NumberFormat("en-US");
const counted = (n: number, one: string, more: string) => (n === 1 ? `1 ${one}` : `${number.format(n)} ${more}`);
const megabytes = (bytes: number) => `${number.format(Math.ceil(bytes / 1024 / 1024))} MB`;

/** What both say of a copy while it is made, and once it is. */
export const copying = {
  made: (file: string, { jobs, entries, bytes }: { readonly jobs: number; readonly entries: number; readonly bytes: number }) =>
    `${file} is made: ${counted(jobs, "job", "jobs")}, ${counted(entries, "entry", "entries")}, ${counted(bytes, "byte", "bytes")}.`,
  folderMissing: (folder: string) => `There is no folder ${folder}; make it first, or name another one.`,
  noRoom: (folder: string, needsBytes: number, freeBytes: number) =>
    `There is no room for the copy on the disk with ${folder}: it needs ${megabytes(needsBytes)} and ${megabytes(freeBytes)} are free; make room, or use another disk.`,
  fullDisk: (folder: string) => `The disk with ${folder} is full, and no copy was made; make room, or use another disk.`,
  notWritten: (file: string, why: string) => `${file} cannot be written (${why}); check the disk and that you may write there.`,
  tooBusy: (file: string) => `${file} was written to faster than it could be copied, and no copy was made; try again.`,
} as const;
