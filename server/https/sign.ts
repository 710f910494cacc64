import type { CertificateExtension } from "selfsigned";
import type { Pair } from "./kept.ts";

/** What a new certificate says; signed by `by`, or by itself where that is null. */
export type ToSign = {
  readonly name: string;
  readonly from: Date;
  readonly until: Date;
  readonly extensions: readonly CertificateExtension[];
  readonly by: Pair | null;
};

/**
 * A certificate with a new key of its own on the curve P-256, signed over SHA-256: what every phone's browser takes
 * (RFC 5280, RFC 8422). What makes it is loaded only here: most starts make none.
 */
export async function signed({ name, from, until, extensions, by }: ToSign): Promise<Pair> {
  const { generate } = await import("selfsigned");
  const made = await generate([{ name: "commonName", value: name }], {
    keyType: "ec",
    curve: "P-256",
    algorithm: "sha256",
    notBeforeDate: from,
    notAfterDate: until,
    extensions: [...extensions],
    ...(by && { ca: { cert: by.certificate, key: by.key } }),
  });
  return { certificate: `${made.cert.trim()}\n`, key: made.private };
}
