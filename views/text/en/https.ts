/** What can still be done about an authority that cannot be used. */
const backOrNew = (folder: string) =>
  `put your copy of ${folder} back, or move it away to have a new authority made, which every phone must then be told to trust`;

/** What the program says about https on the site's own network: where phones find it, or why it does not start. */
export const https = {
  /** The authority's own name, as phones show it among those they trust; 64 letters at most. */
  authority: (host: string) => `Ridgecall site authority ${host}`,
  reach: (addresses: readonly string[], trust: string, fingerprint: string) =>
    [
      "Phones on the site's network open it at:",
      ...addresses.map((address) => `  ${address}`),
      `Each phone is told once to trust this machine: ${trust}`,
      `The authority's SHA-256 fingerprint, to compare with the phone's: ${fingerprint}`,
      "The first address as a code for the phone's camera:",
    ].join("\n"),
  reachedByNobody:
    "No phone can reach it: this machine is on no network, or HOST is an address that only this machine knows; join the site's network, or leave HOST unset, and start again.",
  both: "--https has a certificate of its own; leave RIDGECALL_CERTIFICATE and RIDGECALL_KEY unset, or leave --https out.",
  cannotRead: (file: string, why: string) => `${file}, which is kept for https, cannot be read (${why}); check that you may read it.`,
  cannotWrite: (file: string, why: string) =>
    `${file} cannot be written for https (${why}); check that you may write there, and that the disk has room.`,
  missing: (file: string, folder: string) => `The site authority's file ${file} is missing; ${backOrNew(folder)}.`,
  damaged: (file: string, folder: string) => `The site authority's file ${file} is damaged; ${backOrNew(folder)}.`,
  noAuthority: (file: string, folder: string) => `The certificate in ${file} is not an authority's; ${backOrNew(folder)}.`,
  notTogether: (file: string, folder: string) =>
    `The site authority's key in ${file} does not belong to the certificate beside it; ${backOrNew(folder)}.`,
  notYet: (file: string, day: string) =>
    `The site authority in ${file} begins on ${day}, which is still to come by this machine's clock; set the clock.`,
  ended: (file: string, day: string, folder: string) => `The site authority in ${file} ended on ${day}; ${backOrNew(folder)}.`,
};
