import { readFileSync, rmSync } from "node:fs";
import { request } from "node:https";
import { join } from "node:path";
import type { TLSSocket } from "node:tls";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { scratchFolder } from "../support/scratch.ts";
import { spawnServer } from "../support/spawn-server.ts";

let folder: string;
const file = () => join(folder, "data.db");
const authority = () => readFileSync(join(folder, "data-https", "authority.crt"), "utf8");
beforeAll(() => {
  folder = scratchFolder("site-network");
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** A page over https, by somebody who trusts the one authority and nobody else; without one, whom a machine trusts anyway. */
const page = (url: string, ca?: string) =>
  new Promise<{ body: string; trusted: boolean }>((resolve, reject) => {
    const sent = request(url, { agent: false, ...(ca === undefined ? {} : { ca }) }, (response) => {
      const trusted = (response.socket as TLSSocket).authorized;
      let body = "";
      response.setEncoding("utf8").on("data", (part) => {
        body += part;
      });
      response.on("end", () => resolve({ body, trusted }));
    });
    sent.on("error", reject).end();
  });

describe("the program on the site's own network", () => {
  it("is trusted by whoever trusts its authority, at this start and at the next, and by nobody else", async () => {
    const first = await spawnServer(file(), {}, ["--https"]);
    const trusted = authority();
    const { port } = new URL(first.url);
    expect(await page(first.url, trusted)).toMatchObject({ trusted: true, body: expect.stringContaining("Ridgecall") });
    expect((await page(`https://localhost:${port}/`, trusted)).trusted).toBe(true);
    await expect(page(first.url)).rejects.toMatchObject({ code: "UNABLE_TO_VERIFY_LEAF_SIGNATURE" });
    first.child.kill("SIGTERM");
    const said = await first.said;
    expect(said).toMatch(/The authority's SHA-256 fingerprint.*(?:[\dA-F]{2}:){31}[\dA-F]{2}|^No phone can reach it/m);

    const second = await spawnServer(file(), {}, ["--https"]);
    expect((await page(second.url, trusted)).trusted).toBe(true);
    second.child.kill("SIGTERM");
    await second.stopped;
    expect(authority()).toBe(trusted);
  });

  it.each([
    ["an argument that it does not know", ["--http"], {}, /"--http" is not known here/],
    ["another certificate as well", ["--https"], { RIDGECALL_CERTIFICATE: "a.crt", RIDGECALL_KEY: "a.key" }, /leave --https out/],
  ])("%s: one sentence, and it does not start", async (_, args, env, sentence) =>
    expect(spawnServer(file(), env, args)).rejects.toThrow(sentence),
  );
});
