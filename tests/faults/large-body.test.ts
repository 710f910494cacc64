import { Agent, type IncomingMessage, type RequestOptions, request } from "node:http";
import type { AddressInfo } from "node:net";
import { serve } from "@hono/node-server";
import { afterAll, beforeAll, beforeEach, expect, it } from "vitest";
import { testApp } from "../support/app.ts";

let port: number;
let server: ReturnType<typeof serve>;
let agent: Agent;
beforeAll(async () => {
  await new Promise<void>((resolve) => {
    server = serve({ fetch: testApp().app.fetch, port: 0, hostname: "127.0.0.1" }, (info: AddressInfo) => {
      port = info.port;
      resolve();
    });
  });
});
afterAll(() => new Promise((resolve) => server.close(resolve)));
beforeEach(() => {
  agent = new Agent({ keepAlive: true, maxSockets: 1 });
  return () => agent.destroy();
});

/** One request on the agent's only connection. */
const send = (options: RequestOptions, body?: string | readonly string[]) =>
  new Promise<{ status: number; text: string; reused: boolean }>((resolve, reject) => {
    const sent = request({ host: "127.0.0.1", port, agent, ...options }, (answer: IncomingMessage) => {
      let text = "";
      answer.setEncoding("utf8");
      answer.on("data", (part: string) => {
        text += part;
      });
      answer.on("end", () => resolve({ status: answer.statusCode!, text, reused: sent.reusedSocket }));
    });
    sent.on("error", reject);
    // Closed while more is being written: that the request ends is what counts.
    sent.on("socket", (socket) => socket.on("error", reject));
    for (const part of typeof body === "string" ? [body] : (body ?? [])) sent.write(part);
    sent.end();
  });

const json = { method: "POST", path: "/jobs", headers: { "content-type": "application/json" } };
const MEGABYTE = 1024 * 1024;

it.each<[string, string | readonly string[], RequestOptions]>([
  ["of 1 MB that says how long it is", "a".repeat(MEGABYTE), { ...json, headers: { ...json.headers, "content-length": MEGABYTE } }],
  ["of 1 MB in pieces that does not", Array.from({ length: 64 }, () => "a".repeat(MEGABYTE / 64)), json],
])("a body %s is refused in a sentence, and the same connection takes the next request", async (_what, body, options) => {
  const refused = await send(options, body);
  expect([refused.status, JSON.parse(refused.text)]).toEqual([
    413,
    { problem: "That is too much at once. Nothing was recorded.", fields: {} },
  ]);
  const next = await send({ path: "/jobs.json" });
  expect([next.status, next.reused]).toEqual([200, true]);
});

it("a body of more than anybody waits for is refused, and its connection closed: the next request comes on another", async () => {
  const refused = await send(
    json,
    Array.from({ length: 64 }, () => "a".repeat(MEGABYTE)),
  ).catch(() => null);
  expect(refused?.status ?? 413).toBe(413);
  expect((await send({ path: "/jobs.json" })).status).toBe(200);
});
