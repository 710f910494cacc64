import { createPrivateKey, X509Certificate } from "node:crypto";
import { renameSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { start } from "../terminal.ts";
import { CertificateUnusable, type Pair, readKept, reasonOf } from "./kept.ts";
import type { Covered } from "./machine.ts";
import { signed } from "./sign.ts";

const DAY_MS = 24 * 3600 * 1000;
/** Phones take no certificate of a server that lasts longer than 398 days (Baseline Requirements of the CA/Browser Forum, 6.3.2). */
const LASTS_DAYS = 397;
/** With fewer days left it is renewed, so that it does not end during a job. */
const LEFT_DAYS = 30;
/** Certificate and key in one file, so that none is ever kept without the other. */
const FILE = "server.pem";

/**
 * The certificate that this machine shows to phones, kept in `folder`. It is renewed where the kept one does not cover all
 * that it has to, ends within 30 days, was not signed by this authority, or is none: phones trust the authority, so they see
 * no difference. Throws CertificateUnusable where the kept file cannot be read, or a new one not be written.
 */
export async function machineCertificate(folder: string, authority: Pair, covered: Covered, now: Date): Promise<Pair> {
  const file = join(folder, FILE);
  const kept = readKept(file);
  if (kept !== null && isGood(kept, authority, covered, now)) return { certificate: kept, key: kept };
  const { certificate, key } = await signed({
    name: covered.names[0]!,
    from: new Date(now.getTime() - DAY_MS),
    until: new Date(Math.min(now.getTime() + (LASTS_DAYS - 1) * DAY_MS, Date.parse(new X509Certificate(authority.certificate).validTo))),
    extensions: [
      { name: "basicConstraints", cA: false, critical: true },
      { name: "keyUsage", digitalSignature: true, critical: true },
      { name: "extKeyUsage", serverAuth: true },
      {
        name: "subjectAltName",
        altNames: [
          ...covered.names.map((value) => ({ type: 2 as const, value })),
          ...covered.addresses.map((ip) => ({ type: 7 as const, ip })),
        ],
      },
    ],
    by: authority,
  });
  const both = `${certificate}${key}`;
  write(file, both);
  return { certificate: both, key: both };
}

function isGood(pem: string, authority: Pair, { names, addresses }: Covered, now: Date): boolean {
  try {
    const own = new X509Certificate(pem);
    const issuer = new X509Certificate(authority.certificate);
    return (
      own.checkIssued(issuer) &&
      own.verify(issuer.publicKey) &&
      own.checkPrivateKey(createPrivateKey(pem)) &&
      Date.parse(own.validFrom) <= now.getTime() &&
      Date.parse(own.validTo) >= now.getTime() + LEFT_DAYS * DAY_MS &&
      names.every((name) => own.checkHost(name) !== undefined) &&
      addresses.every((address) => own.checkIP(address) !== undefined)
    );
  } catch {
    return false;
  }
}

/** Takes the place of the kept one whole or not at all. */
function write(file: string, text: string) {
  try {
    writeFileSync(`${file}.new`, text, { mode: 0o600 });
    renameSync(`${file}.new`, file);
  } catch (error) {
    throw new CertificateUnusable(start.https.cannotWrite(file, reasonOf(error)));
  }
}
