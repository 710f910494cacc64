import { X509Certificate } from "node:crypto";
import { Hono } from "hono";
import { beforeAll, describe, expect, it } from "vitest";
import { announced } from "../../server/https/announce.ts";
import { signed } from "../../server/https/sign.ts";
import type { SiteNetwork } from "../../server/https/site.ts";
import { Problem } from "../../server/input/problem.ts";
import { inLanguage } from "../../server/routes/language.ts";
import { trustRoutes } from "../../server/routes/trust.tsx";
import { LANGUAGES, type Languages } from "../../views/text/languages.ts";
import { textsOf } from "../support/page-text.ts";
import { outsideMarks, pseudoLanguage } from "../support/pseudo-language.ts";

const { words: pseudo } = pseudoLanguage();
const ALL: Languages = [...LANGUAGES, pseudo];
const ADDRESSES = ["https://192.168.1.20:4160/", "https://10.0.0.4:4160/"];
const FILE = "/trust/ridgecall-site-authority.crt";

let certificate: string;
beforeAll(async () => {
  const extensions = [{ name: "basicConstraints" as const, cA: true, critical: true }];
  const [from, until] = [new Date("2026-06-02"), new Date("2036-06-02")];
  ({ certificate } = await signed({ name: "an authority", from, until, extensions, by: null }));
});

/** The routes by themselves, in every language there is. */
function served(network: SiteNetwork | null) {
  const app = new Hono().use(...inLanguage(ALL)).route("/", trustRoutes(network));
  app.onError((error, c) => c.text(error instanceof Problem ? error.sentence(c.get("words")) : `${error}`, 404));
  return async (path: string, lang = "en") => {
    const answer = await app.request(path, { headers: { "accept-language": lang } });
    return { answer, text: await answer.text() };
  };
}
const onSite = (addresses: readonly string[] = ADDRESSES) => served({ certificate, addresses });

describe("how a phone is told to trust the site's network", () => {
  it.each(ALL.map((words) => [words.lang, words] as const))("is told in the language %s, whole", async (lang, { trust }) => {
    const { text } = await onSite()("/trust", lang);
    const texts = textsOf(text);
    expect(text).toContain(`<html lang="${lang}">`);
    for (const said of [trust.title, trust.compareText, trust.meansText, trust.takeOffText, trust.download]) expect(texts).toContain(said);
    for (const { name, steps, remove } of trust.platforms) expect(texts).toEqual(expect.arrayContaining([name, ...steps, remove]));
  });

  it("says nothing past its words", async () => {
    for (const ask of [onSite(), onSite([]), served(null)]) {
      const texts = textsOf((await ask("/trust", "qps")).text).filter((text) => !ADDRESSES.includes(text));
      expect(texts.filter((text) => /\p{L}/u.test(outsideMarks(text)))).toEqual([]);
    }
  });

  it("shows every address, the certificate's own fingerprint and the way to it", async () => {
    const { text } = await onSite()("/trust");
    const texts = textsOf(text);
    expect(texts).toEqual(expect.arrayContaining(ADDRESSES));
    expect(texts).toContain(new X509Certificate(certificate).fingerprint256);
    expect(text).toContain(`href="${FILE}"`);
  });

  it("draws the first address as a code in a way that our policy allows: no style, no script in it", async () => {
    const { text } = await onSite()("/trust");
    const [svg] = /<svg.*?<\/svg>/s.exec(text)!;
    expect(svg).toMatch(/viewBox="0 0 \d+ \d+"/);
    expect(text).not.toMatch(/<[^>]+ (?:style|on\w+)=/);
    expect((await onSite([...ADDRESSES].reverse())("/trust")).text).not.toContain(svg);
    expect((await onSite([])("/trust")).text).not.toContain("<svg");
  });

  it("gives the certificate as it is kept, as what a phone takes for one", async () => {
    const { answer, text } = await onSite()(FILE);
    expect([answer.status, answer.headers.get("content-type")]).toEqual([200, "application/x-x509-ca-cert"]);
    expect(new X509Certificate(text).raw).toEqual(new X509Certificate(certificate).raw);
  });

  it("says how to start it where the server is not on the site's network, and has no certificate then", async () => {
    const ask = served(null);
    expect((await ask("/trust")).text).toContain("npm start -- --https");
    const { answer, text } = await ask(FILE);
    expect([answer.status, text]).toEqual([404, "There is no site authority here. Start the server with: npm start -- --https"]);
  });
});

describe("what the terminal says at the start", () => {
  it("is every address, the way to trust, the fingerprint and a code, with colors where the terminal has them", async () => {
    const said = await announced({ certificate, addresses: ADDRESSES }, false);
    for (const part of [...ADDRESSES, `${ADDRESSES[0]}trust`, new X509Certificate(certificate).fingerprint256])
      expect(said).toContain(part);
    expect(said).toMatch(/^ *█▀▀▀▀▀█/m);
    expect(said).not.toContain("\u001b");
    expect(await announced({ certificate, addresses: ADDRESSES }, true)).toContain("\u001b[47m");
  });
  it("is one sentence where no phone can reach the machine", async () => {
    expect(await announced({ certificate, addresses: [] }, false)).toMatch(/^No phone can reach it: .*start again\.$/);
  });
});
