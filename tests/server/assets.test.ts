import { readFileSync } from "node:fs";
import { gunzipSync } from "node:zlib";
import { describe, expect, it } from "vitest";
import { createAssets } from "../../server/assets.ts";
import { STYLESHEETS } from "../../views/stylesheets.ts";
import { LANGUAGES } from "../../views/text/languages.ts";
import { brief, MORNING, testApp } from "../support/app.ts";
import { FIRST_VISIT_GOAL, firstVisit, totalOf } from "../support/first-visit.ts";
import { openedJob } from "../support/job.ts";

const world = testApp(undefined, MORNING, LANGUAGES, createAssets());
const job = await openedJob(brief(), world);
const ask = async (path: string, headers: Record<string, string> = {}, method = "GET") => world.app.request(path, { headers, method });
const htmlOf = async (path: string) => (await ask(path)).text();
const loadedBy = (html: string) => [...html.matchAll(/(?:href|src)="(\/assets\/[^"]+\.(?:css|js))"/g)].map((m) => m[1]!);
const GZIP = { "accept-encoding": "gzip, deflate" };

describe("what a page loads", () => {
  it("is one sheet and one script, each named after what is in it and kept for good", async () => {
    const loaded = loadedBy(await htmlOf(`/jobs/${job.job}?as=p1`));
    expect(loaded).toEqual([
      expect.stringMatching(/^\/assets\/guide\.[\da-f]{12}\.css$/),
      expect.stringMatching(/^\/assets\/client\.[\da-f]{12}\.js$/),
    ]);
    for (const path of loaded) {
      const answer = await ask(path);
      expect([answer.status, answer.headers.get("cache-control")]).toEqual([200, "public, max-age=31536000, immutable"]);
    }
  });

  it("is named on pages of every kind, the streamed ones and those that refuse too", async () => {
    for (const path of ["/", "/findings", "/tents", "/drafts/new", "/nothing-here", "/jobs/none", `/jobs/${job.job}/record`])
      expect([path, loadedBy(await htmlOf(path))]).toEqual([
        path,
        [expect.stringMatching(/\.[\da-f]{12}\.css$/), expect.stringMatching(/\.[\da-f]{12}\.js$/)],
      ]);
  });

  it("answers to its plain name, and to one of before, with what is current, asked about each time", async () => {
    const [named] = loadedBy(await htmlOf("/"));
    const current = await (await ask(named!)).text();
    for (const path of ["/assets/home.css", "/assets/home.000000000000.css"]) {
      const answer = await ask(path);
      expect([await answer.text(), answer.headers.get("cache-control")]).toEqual([current, "no-cache"]);
      expect((await ask(path, { "if-none-match": answer.headers.get("etag")! })).status).toBe(304);
    }
  });

  it.each(["/assets/nothing.css", "/assets/record.png", "/assets/constructor.css", "/assets/%2e%2e/stylesheets.ts"])(
    "is not %s",
    async (path) => expect((await ask(path)).status).toBe(404),
  );

  it("has the layers in their order, whole, on every sheet", async () => {
    for (const name of Object.keys(STYLESHEETS))
      expect(await (await ask(`/assets/${name}.css`)).text()).toMatch(
        /^@layer tokens,base,parts,pages;@layer tokens\{.*@layer base\{.*@layer parts\{/s,
      );
  });

  it("is named plainly by an application that serves none of it", async () => {
    expect(loadedBy(await (await testApp().app.request("/")).text())).toEqual(["/assets/home.css", "/assets/client.js"]);
  });
});

describe("what goes over the wire", () => {
  it.each([
    "/",
    `/jobs/${job.job}?as=p1`,
    `/jobs/${job.job}/record`,
    "/assets/client.js",
    "/assets/guide.css",
    "/jobs.json",
    `/jobs/${job.job}/layout.svg`,
    "/manifest.webmanifest",
  ])("is compressed where that is asked for: %s", async (path) => {
    const [plain, zipped] = [await ask(path), await ask(path, GZIP)];
    expect([plain.headers.get("content-encoding"), zipped.headers.get("content-encoding")]).toEqual([null, "gzip"]);
    for (const { headers } of [plain, zipped]) expect(headers.get("vary")).toMatch(/accept-encoding/i);
    const [text, bytes] = [await plain.text(), new Uint8Array(await zipped.arrayBuffer())];
    expect(bytes.length).toBeLessThan(text.length);
    expect(gunzipSync(bytes).length).toBe(new TextEncoder().encode(text).length);
  });

  it.each(["gzip;q=0", "*, gzip;q=0, deflate;q=0", "br"])("is not compressed for one who does not take it: %s", async (encoding) =>
    expect((await ask("/assets/client.js", { "accept-encoding": encoding })).headers.get("content-encoding")).toBeNull(),
  );

  it("has its head alone where that is asked for", async () => {
    const answer = await ask("/assets/client.js", GZIP, "HEAD");
    expect([answer.status, await answer.text(), answer.headers.get("content-encoding")]).toEqual([200, "", "gzip"]);
  });

  it("lets a phone with one bar see the guide for the first time: 60 kB with all it loads", async () => {
    const visit = await firstVisit(ask, `/jobs/${job.job}?as=p1`);
    expect([...visit.keys()]).toEqual([
      `/jobs/${job.job}?as=p1`,
      "/assets/icon.svg",
      "/manifest.webmanifest",
      expect.stringContaining("/assets/guide."),
      expect.stringContaining("/assets/client."),
    ]);
    expect(totalOf(visit)).toBeLessThanOrEqual(FIRST_VISIT_GOAL);
  });

  it("is safe from being taken for something else", async () => {
    for (const path of ["/", "/assets/client.js", "/assets/icon.svg"])
      expect((await ask(path)).headers.get("x-content-type-options")).toBe("nosniff");
  });

  it("leaves a live screen alone: its first event comes at once, as it is", async () => {
    const answer = await ask(`/jobs/${job.job}/live`, GZIP);
    expect([answer.headers.get("content-type"), answer.headers.get("content-encoding")]).toEqual(["text/event-stream", null]);
    const reader = answer.body!.getReader();
    expect(new TextDecoder().decode((await reader.read()).value)).toMatch(/^data: <hx-partial/);
    await reader.cancel();
  });
});

describe("a phone that keeps the guide", () => {
  it("finds its name, its icons and its colors", async () => {
    const html = await htmlOf("/");
    expect(html).toContain('<link rel="manifest" href="/manifest.webmanifest"/>');
    const answer = await ask("/manifest.webmanifest");
    expect(answer.headers.get("content-type")).toBe("application/manifest+json; charset=utf-8");
    const { icons, ...told } = (await answer.json()) as { icons: { src: string; type: string; sizes: string; purpose: string }[] };
    expect(told).toMatchObject({ name: "Ridgecall", start_url: "/", display: "standalone" });
    expect(icons.map(({ purpose, sizes }) => `${purpose} ${sizes}`)).toEqual([
      "any any",
      "any 192x192",
      "any 512x512",
      "maskable 192x192",
      "maskable 512x512",
    ]);
    for (const { src, type, sizes } of icons) {
      const icon = await ask(src);
      expect([src, icon.status, icon.headers.get("content-type")?.split(";")[0]]).toEqual([src, 200, type]);
      const bytes = Buffer.from(await icon.arrayBuffer());
      // A PNG says its width and its height in bytes 16 to 23 (ISO/IEC 15948, 11.2.2).
      if (type === "image/png") expect(`${bytes.readUInt32BE(16)}x${bytes.readUInt32BE(20)}`).toBe(sizes);
    }
    expect((await ask(/rel="apple-touch-icon" href="([^"]+)"/.exec(html)![1]!)).status).toBe(200);
  });

  it("is framed in the ground of the page, by day and by night", async () => {
    const grounds = [...readFileSync("views/parts/tokens.css", "utf8").matchAll(/--ground: (#\w+)/g)].map((m) => m[1]!);
    const told = [...(await htmlOf("/")).matchAll(/name="theme-color" media="\(prefers-color-scheme: (\w+)\)" content="(#\w+)"/g)].map(
      ([, ...is]) => is,
    );
    expect(told).toEqual([
      ["light", grounds[0]],
      ["dark", grounds[1]],
    ]);
    expect(await (await ask("/manifest.webmanifest")).json()).toMatchObject({ theme_color: grounds[0], background_color: grounds[0] });
  });
});
