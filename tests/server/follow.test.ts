import { Hono } from "hono";
import { expect, it } from "vitest";
import type { Hub } from "../../server/hub.ts";
import { follow } from "../../server/routes/follow.ts";

it("a screen whose drawing of a job fails leaves nobody listening", async () => {
  const listening = new Set<() => void>();
  const hub: Hub = {
    changed: () => {},
    listen: (_, wake) => {
      listening.add(wake);
      return () => listening.delete(wake);
    },
  };
  const app = new Hono().get("/", (c) => follow(c, hub, "job-1", () => Promise.reject(new Error("no such entry"))));
  await (await app.request("/")).text();
  expect(listening.size).toBe(0);
});
