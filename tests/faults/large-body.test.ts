import { Agent, type IncomingMessage, type RequestOptions, request } from "node:http";
import type { AddressInfo } from "node:net";
import { serve } from "@hono/node-server";
import { afterAll, beforeAll, beforeEach, expect, it } from "vitest";
import { brief, testApp } from "../support/app.ts";

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

const headers = { "content-type": "application/json" };
const json = { method: "POST", path: "/tents", headers };
const MEGABYTE = 1024 * 1024;

it.each<[string, string | readonly string[], RequestOptions]>([
  ["of 1 MB that says how long it is", "a".repeat(MEGABYTE), { ...json, headers: { ...json.headers, "content-length": MEGABYTE } }],
  ["of 1 MB in pieces that does not", Array.from({ length: 64 }, () => "a".repeat(MEGABYTE / 64)), json],
])("a body %s is refused in a sentence, and the same connection takes the next request", async (_what, body, options) => {
  const refused = await send(options, body);
  expect([refused.status, JSON.parse(refused.text)]).toEqual([
    413,
    { problem: "That is too much at once: 1 MB came, 64 kB is the limit. Nothing was recorded.", fields: {} },
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

/** A brief with one gas line of so many stretches, far from the tent. */
const withStretches = (n: number) => {
  const points = Array.from({ length: n + 1 }, (_, i) => ({ alongFt: -500 + (i % 7) + 0.123, offFt: -500 - i / 10 }));
  const line = { id: "gas 1", kind: "gas", told: "ticket", widthIn: null, toleranceIn: null, errorFt: 0.5, points };
  return JSON.stringify({ key: `stretches-${n}`, brief: { ...brief(), siteModel: { buried: [line] } } });
};
it("a brief with a site within its stretches is taken as JSON", async () => {
  expect((await send({ ...json, path: "/jobs" }, withStretches(4900))).status).toBe(201);
});
it("a brief with far too many is refused with how much came and both limits", async () => {
  const refused = await send({ ...json, path: "/jobs" }, withStretches(100_001));
  expect([refused.status, JSON.parse(refused.text).problem]).toEqual([
    413,
    expect.stringMatching(
      /^That is too much at once: \d\.\d MB came, 1 MB is the limit, and 5,000 stretches for a site\. Nothing was recorded\.$/,
    ),
  ]);
});
it("a form takes 64 kB and no more, where a script may send a brief", async () => {
  const form = {
    ...json,
    path: "/jobs",
    headers: { "content-type": "application/x-www-form-urlencoded", origin: `http://127.0.0.1:${port}` },
  };
  expect((await send(form, `title=${"a".repeat(100_000)}`)).text).toContain("98 kB came, 64 kB is the limit.");
});
