import { X509Certificate } from "node:crypto";

/** The SHA-256 fingerprint of a certificate in PEM, as phones show it: 32 pairs of hexadecimal digits with colons between. */
export const fingerprintOf = (certificate: string): string => new X509Certificate(certificate).fingerprint256;
