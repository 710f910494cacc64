import { siteAuthority } from "./authority.ts";
import type { Pair } from "./kept.ts";
import { machineCertificate } from "./leaf.ts";
import { coveredBy, type Machine, reachedAt, urlOf } from "./machine.ts";

/** What https on the site's own network is made of: what the server shows, who signed it, and where phones find it. */
export type Site = { readonly own: Pair; readonly authority: string; readonly hosts: readonly string[] };
/** The data file, what the server listens on, the machine and the moment, all as of this start. */
type Asked = { readonly file: string; readonly host: string; readonly machine: Machine; readonly now: Date };

/** What pages need of the site's network: the authority's certificate in PEM, and the addresses under which a phone finds the first page. */
export type SiteNetwork = { readonly certificate: string; readonly addresses: readonly string[] };

/** Where authority and certificate are kept: a folder beside the data file, by its name. */
export const folderBeside = (file: string): string => `${file.replace(/\.db$/, "")}-https`;

/**
 * Authority and certificate as they are kept, created if missing; a certificate that no longer fits is renewed.
 * Throws CertificateUnusable, with one sentence, where a kept file cannot be used.
 */
export async function siteOf({ file, host, machine, now }: Asked): Promise<Site> {
  const folder = folderBeside(file);
  const authority = await siteAuthority(folder, machine.host, now);
  const own = await machineCertificate(folder, authority, coveredBy(machine, host), now);
  return { own, authority: authority.certificate, hosts: reachedAt(machine, host) };
}

/** The site's network as pages tell it. `port` is asked for each time: which one a server got is known once it listens. */
export const networkOf = (site: Site, port: () => number): SiteNetwork => ({
  certificate: site.authority,
  get addresses() {
    return site.hosts.map((host) => urlOf("https", host, port()));
  },
});
