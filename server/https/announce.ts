import { start } from "../terminal.ts";
import { fingerprintOf } from "./fingerprint.ts";
import { codeForTerminal } from "./qr.ts";
import type { SiteNetwork } from "./site.ts";

/**
 * What is said once it listens: every address for a phone, the first as a QR code, where the authority's certificate is to be
 * had, and its fingerprint, which a phone's is compared with. `inColor`: whether the terminal takes colors.
 */
export async function announced({ certificate, addresses }: SiteNetwork, inColor: boolean): Promise<string> {
  const [first] = addresses;
  if (first === undefined) return start.https.reachedByNobody;
  return [start.https.reach(addresses, `${first}trust`, fingerprintOf(certificate)), await codeForTerminal(first, inColor)].join("\n");
}
