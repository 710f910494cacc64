import { createPrivateKey, X509Certificate } from "node:crypto";
import { mkdtempSync, readdirSync, renameSync, rmdirSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { start } from "../terminal.ts";
import { CertificateUnusable, codeOf, type Pair, readKept, reasonOf } from "./kept.ts";
import { signed } from "./sign.ts";

const DAY_MS = 24 * 3600 * 1000;
const YEARS = 10;
/** A name in a certificate is at most so many letters (RFC 5280, ub-common-name). */
const MAX_NAME = 64;
const CERTIFICATE = "authority.crt";
const KEY = "authority.key";

/**
 * The site's certificate authority: read where its folder holds something, made where it holds nothing. Phones trust the one
 * that is there, so none is ever made over it. `host` is the machine's name, which stands in the authority's.
 * Throws CertificateUnusable, with one sentence, where the kept one cannot be used or a new one not be written.
 */
export async function siteAuthority(folder: string, host: string, now: Date): Promise<Pair> {
  if (holdsNothing(folder)) await make(folder, host, now);
  return read(folder, now);
}

function holdsNothing(folder: string): boolean {
  try {
    return readdirSync(folder).length === 0;
  } catch (error) {
    if (codeOf(error) === "ENOENT") return true;
    throw new CertificateUnusable(start.https.cannotRead(folder, reasonOf(error)));
  }
}

/** Whole or not at all: killed on the way, it leaves nothing in its place that would be refused later. */
async function make(folder: string, host: string, now: Date): Promise<void> {
  const until = new Date(now);
  until.setUTCFullYear(until.getUTCFullYear() + YEARS);
  const { certificate, key } = await signed({
    name: start.https
      .authority(host.replaceAll(/[^a-z\d.-]/gi, ""))
      .slice(0, MAX_NAME)
      .trim(),
    // A phone whose clock is behind takes it too.
    from: new Date(now.getTime() - DAY_MS),
    until,
    extensions: [
      // It signs for machines, and lets nobody else be an authority.
      { name: "basicConstraints", cA: true, pathLenConstraint: 0, critical: true },
      { name: "keyUsage", keyCertSign: true, critical: true },
    ],
    by: null,
  });
  let made: string | null = null;
  try {
    // The system gives such a folder to its owner alone (0700).
    made = mkdtempSync(`${folder}.new-`);
    writeFileSync(join(made, KEY), key, { mode: 0o600 });
    writeFileSync(join(made, CERTIFICATE), certificate);
    removeEmpty(folder);
    renameSync(made, folder);
  } catch (error) {
    throw new CertificateUnusable(start.https.cannotWrite(folder, reasonOf(error)));
  } finally {
    if (made) rmSync(made, { recursive: true, force: true });
  }
}

/** Not every system lets a folder take the place of an empty one. */
function removeEmpty(folder: string) {
  try {
    rmdirSync(folder);
  } catch (error) {
    if (codeOf(error) !== "ENOENT") throw error;
  }
}

function read(folder: string, now: Date): Pair {
  const [certificateFile, keyFile] = [join(folder, CERTIFICATE), join(folder, KEY)];
  const [certificate, key] = [readThere(certificateFile, folder), readThere(keyFile, folder)];
  const x509 = parsed(certificateFile, folder, () => new X509Certificate(certificate));
  const privateKey = parsed(keyFile, folder, () => createPrivateKey(key));
  if (!x509.ca) throw new CertificateUnusable(start.https.noAuthority(certificateFile, folder));
  if (!x509.checkPrivateKey(privateKey)) throw new CertificateUnusable(start.https.notTogether(keyFile, folder));
  if (now < new Date(x509.validFrom)) throw new CertificateUnusable(start.https.notYet(certificateFile, dayOf(x509.validFrom)));
  if (now > new Date(x509.validTo)) throw new CertificateUnusable(start.https.ended(certificateFile, dayOf(x509.validTo), folder));
  return { certificate, key };
}

function readThere(file: string, folder: string): string {
  const text = readKept(file);
  if (text === null) throw new CertificateUnusable(start.https.missing(file, folder));
  return text;
}

function parsed<T>(file: string, folder: string, parse: () => T): T {
  try {
    return parse();
  } catch {
    throw new CertificateUnusable(start.https.damaged(file, folder));
  }
}

const dayOf = (date: string): string => new Date(date).toISOString().slice(0, 10);
