import { Hono } from "hono";
import { CERTIFICATE_PATH, type TrustState } from "../../views/pages/trust/state.ts";
import { TrustPage } from "../../views/pages/trust/view.tsx";
import { fingerprintOf } from "../https/fingerprint.ts";
import { codeForPage } from "../https/qr.ts";
import type { SiteNetwork } from "../https/site.ts";
import { Problem } from "../input/problem.ts";
import { page } from "./page.ts";

/**
 * How a phone is told to trust the site's network, and the certificate that it has to trust, in PEM. `network` is null where
 * the program was not started for it: the page says so then, and the certificate is not there.
 */
export function trustRoutes(network: SiteNetwork | null) {
  const app = new Hono();
  app.get("/trust", async (c) => {
    const trust = network && (await stateOf(network));
    return c.html(page(c, <TrustPage trust={trust} words={c.get("words")} />));
  });
  app.get(CERTIFICATE_PATH, (c) => {
    if (network === null) throw new Problem(404, (w) => w.trust.noCertificate);
    return c.body(network.certificate, 200, { "content-type": "application/x-x509-ca-cert", "cache-control": "no-cache" });
  });
  return app;
}

async function stateOf({ certificate, addresses }: SiteNetwork): Promise<TrustState> {
  const [first] = addresses;
  return { fingerprint: fingerprintOf(certificate), addresses, code: first === undefined ? null : await codeForPage(first) };
}
