/** After a swap nobody has read what it brought, and nobody presses or speaks to it, before so many ms are over. */
export const SETTLE_MS = 400;

let timer = 0;

/** A swap has just moved the call. Until it has settled the page says so of itself, as it does of its voice and its lock. */
export function settle(): void {
  document.body.dataset.settling = "yes";
  clearTimeout(timer);
  timer = window.setTimeout(() => delete document.body.dataset.settling, SETTLE_MS);
}

/** Whether what comes now was meant for the call before. */
export const isSettling = (): boolean => document.body.dataset.settling !== undefined;
