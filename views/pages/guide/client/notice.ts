import { regions } from "../../../regions.ts";

/** Says something of the page's own where the guide's replies stand; nothing takes away what stands there. */
export function notice(text: string): void {
  const place = document.getElementById(regions.notice);
  if (place) place.textContent = text;
}
