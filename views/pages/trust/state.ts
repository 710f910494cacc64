/**
 * What a phone needs to trust the site's network: the authority's SHA-256 fingerprint, the addresses under which phones find
 * the first page, and the first of them as a QR code in SVG, null where there is none.
 */
export type TrustState = { readonly fingerprint: string; readonly addresses: readonly string[]; readonly code: string | null };

/** Where the authority's certificate is to be had, under a name that a phone keeps it by. */
export const CERTIFICATE_PATH = "/trust/ridgecall-site-authority.crt";
