import { rmSync, writeFileSync } from "node:fs";
import { request } from "node:https";
import { join } from "node:path";
import selfsigned from "selfsigned";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { scratchFolder } from "../support/scratch.ts";
import { spawnServer } from "../support/spawn-server.ts";

let folder: string;
const file = (name: string) => join(folder, name);
beforeAll(async () => {
  folder = scratchFolder("https");
  for (const name of ["one", "other"]) {
    const made = await selfsigned.generate([{ name: "commonName", value: "127.0.0.1" }], { algorithm: "sha256", keySize: 2048 });
    writeFileSync(file(`${name}.crt`), made.cert);
    writeFileSync(file(`${name}.key`), made.private);
  }
  writeFileSync(file("text.crt"), "no certificate");
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const started = (certificate: string, key: string) =>
  spawnServer(file("data.db"), {
    RIDGECALL_CERTIFICATE: certificate === "" ? "" : file(certificate),
    RIDGECALL_KEY: key === "" ? "" : file(key),
  });

const asked = (url: string, method: string, body = "") =>
  new Promise<{ status: number; body: string }>((resolve, reject) => {
    const headers = { origin: new URL(url).origin, "content-type": "application/x-www-form-urlencoded" };
    const sent = request(url, { method, headers, rejectUnauthorized: false }, (response) => {
      let got = "";
      response.on("data", (part) => {
        got += part;
      });
      response.on("end", () => resolve({ status: response.statusCode ?? 0, body: got }));
    });
    sent.on("error", reject).end(body);
  });

describe("phones listen over https only", () => {
  it("with a certificate and its key the pages are served over https", async () => {
    const server = await started("one.crt", "one.key");
    expect(server.url).toMatch(/^https:/);
    const page = await asked(server.url, "GET");
    const form = await asked(`${server.url}jobs`, "POST", "title=");
    server.child.kill("SIGTERM");
    await server.stopped;
    expect(page.body).toContain("Ridgecall");
    // A form from its own page gets as far as being read: the title is missing.
    expect(form.status).toBe(422);
  });
  it.each([
    ["the key of another", "one.crt", "other.key", /cannot be used/],
    ["a file that is no certificate", "text.crt", "one.key", /cannot be used/],
    ["a file that is not there", "missing.crt", "one.key", /cannot be used \(ENOENT/],
    ["no key", "one.crt", "", /name both/],
  ])("%s: one sentence, and it does not start", async (_, certificate, key, sentence) =>
    expect(started(certificate, key)).rejects.toThrow(sentence),
  );
});
