import { regions } from "../../../regions.ts";

/** Says something of the page's own where the guide's replies stand; nothing takes away what stands there. */
export function notice(text: string): void {
  const place = document.getElementById(regions.notice);
  if (place) place.textContent = text;
}

/** A reply that the call said already goes once the call says it no more: somebody else has answered since. */
export function dropOutdated(): void {
  const reply = document.querySelector(`#${regions.notice} .said-above`);
  const call = document.getElementById(regions.call)?.textContent ?? "";
  if (reply && !call.includes(reply.textContent)) reply.remove();
}
