import { Hono } from "hono";
import { expect, it } from "vitest";
import { follow } from "../../server/routes/follow.ts";

it("a screen whose drawing of a job fails leaves nobody listening", async () => {
  const listening = new Set<() => void>();
  const listen = (wake: () => void) => {
    listening.add(wake);
    return () => void listening.delete(wake);
  };
  const app = new Hono().get("/", (c) => follow(c, { listen, shown: () => Promise.reject(new Error("no such entry")) }));
  await (await app.request("/")).text();
  expect(listening.size).toBe(0);
});
