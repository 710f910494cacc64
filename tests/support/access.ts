import type { AccessSettings } from "../../server/access/settings.ts";
import type { ScreenAccess } from "../../views/parts/say-form.tsx";

/** Bytes that come out the same at every run, each call other ones. */
export function countedBytes(): AccessSettings["random"] {
  let next = 0;
  return (count) => Uint8Array.from({ length: count }, () => (next = (next * 37 + 11) % 251));
}

/** A server on which anybody speaks as anybody: what most tests are about is not who comes in. */
export const forTrials = (): AccessSettings => ({ mode: "trials", random: countedBytes(), addressOf: () => "192.0.2.1" });

/** A screen of a real server, in the hands of a lead. */
export const LEADS_SCREEN: ScreenAccess = { present: ["p1", "p2", "p3", "p4"], here: null, mayHandOutCodes: true, trials: false };
