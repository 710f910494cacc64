import { Hono } from "hono";
import { beforeEach, expect, it } from "vitest";
import { createTurns } from "../../server/routes/in-turns.ts";
import { yieldTurn } from "../../server/routes/stream.ts";

let done: string[];
let app: Hono;
let connecting: (change: 1 | -1) => void;
beforeEach(() => {
  const turns = createTurns();
  connecting = turns.connecting;
  done = [];
  app = new Hono();
  app.use(turns.counted);
  app.use("/long", turns.lastInTurn);
  app.get("/long", (c) => {
    done.push("long page");
    return c.text("");
  });
});
const turns = async (count: number) => {
  for (let turn = 0; turn < count; turn++) await yieldTurn();
};

it("a long page waits for who is connecting", async () => {
  connecting(1);
  const page = app.request("/long");
  await turns(20);
  done.push("connected");
  connecting(-1);
  await page;
  expect(done).toEqual(["connected", "long page"]);
});
it("a long page waits for what is being answered", async () => {
  app.get("/short", async (c) => {
    await turns(20);
    done.push("short page");
    return c.text("");
  });
  await Promise.all([app.request("/long"), app.request("/short")]);
  expect(done).toEqual(["short page", "long page"]);
});
it("a long page is made where something is always going on", async () => {
  connecting(1);
  await Promise.all([app.request("/long"), app.request("/long")]);
  expect(done).toEqual(["long page", "long page"]);
});
it("no long page is made for who went away while it waited", async () => {
  const away = new AbortController();
  const pages = [app.request("/long"), app.request("/long", { signal: away.signal })];
  away.abort();
  await Promise.all(pages);
  expect(done).toEqual(["long page"]);
});
