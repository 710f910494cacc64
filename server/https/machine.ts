import { isIP } from "node:net";
import type { networkInterfaces } from "node:os";
import { isLoopback } from "../access/loopback.ts";

/** What a machine is called, and its addresses on its networks, the likeliest to be the site's own first. */
export type Machine = { readonly host: string; readonly addresses: readonly string[] };
/** What a certificate has to be good for: names, and addresses of IPv4 and IPv6. */
export type Covered = { readonly names: readonly string[]; readonly addresses: readonly string[] };

/**
 * The machine as it stands on its networks now.
 * @param host its name, as `os.hostname()` gives it
 * @param interfaces as `os.networkInterfaces()` gives them; those that only the machine itself can reach are left out
 */
export function machineOf(host: string, interfaces: ReturnType<typeof networkInterfaces>): Machine {
  const found = Object.values(interfaces).flatMap((there = []) => there.filter(({ internal }) => !internal));
  const addresses = [...new Set(found.map(({ address }) => address.split("%")[0]!))];
  return { host, addresses: addresses.sort((a, b) => rank(a) - rank(b)) };
}

/** A site's router hands out the first two kinds (RFC 1918); the last two were made up by the machine itself (RFC 3927, 4291). */
const KINDS = [/^192\.168\./, /^10\./, /^(?!169\.254\.)[\d.]+$/, /^(?!fe[89ab])[\da-f]*:/i, /^169\.254\./];
const rank = (address: string): number => {
  const kind = KINDS.findIndex((is) => is.test(address));
  return kind === -1 ? KINDS.length : kind;
};

/** Labels of letters, digits and hyphens with dots between (RFC 1123): what may stand in a certificate as a name. */
const NAME = /^(?=.{1,253}$)[a-z\d](?:[a-z\d-]{0,61}[a-z\d])?(?:\.[a-z\d](?:[a-z\d-]{0,61}[a-z\d])?)*$/i;
const isName = (host: string) => NAME.test(host) && isIP(host) === 0;

/** Every name and address by which this machine may be asked for; `listensOn` is the one it was told to listen on. */
export function coveredBy({ host, addresses }: Machine, listensOn: string): Covered {
  const names = ["localhost", host, `${host.split(".")[0]}.local`, listensOn].map((name) => name.toLowerCase()).filter(isName);
  const own = isIP(listensOn) === 0 || isEvery(listensOn) ? [] : [listensOn];
  return { names: [...new Set(names)], addresses: [...new Set(["127.0.0.1", "::1", ...addresses, ...own])] };
}

/** Under which names or addresses phones on the machine's networks find it, when it listens on `listensOn`. May be none. */
export function reachedAt({ addresses }: Machine, listensOn: string): readonly string[] {
  if (isLoopback(listensOn)) return [];
  if (!isEvery(listensOn)) return [listensOn];
  // One that the machine made up for IPv6 is no address in a browser, and what listens on 0.0.0.0 listens on IPv4 only.
  return addresses.filter((address) => (isIP(address) === 4 ? true : listensOn === "::" && rank(address) < KINDS.length));
}

/** Whether it means every address that the machine has. */
const isEvery = (listensOn: string) => ["", "0.0.0.0", "::"].includes(listensOn);

/** The address of the first page. Of a machine that listens on every address it is the one that the machine itself uses. */
export function urlOf(scheme: "http" | "https", listensOn: string, port: number): string {
  const host = !isEvery(listensOn) ? listensOn : listensOn === "::" ? "::1" : "127.0.0.1";
  return `${scheme}://${isIP(host) === 6 ? `[${host}]` : host}:${port}/`;
}
