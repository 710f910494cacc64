import { once } from "node:events";
import { Agent, get, type IncomingMessage } from "node:http";
import { Hono } from "hono";
import { expect, it } from "vitest";
import { createHub } from "../../server/hub.ts";
import { sqliteJournal } from "../../server/journal/sqlite.ts";
import { run } from "../../server/program.ts";
import { LANGUAGES } from "../../views/text/languages.ts";
import { forTrials } from "../support/access.ts";
import { MORNING } from "../support/app.ts";

it("a connection stays open for a minute with nothing asked on it, and a stop ends it at once", async () => {
  const journal = sqliteJournal(":memory:");
  // Nobody signs in: to hash a passphrase takes as long as a test.
  await journal.access.keepSecret("passphrase", "none");
  const clock = () => ({ wall: MORNING, elapsedMs: 0 });
  const rest = { newId: () => "id-00000001", wakeWord: "albatross", access: forTrials(), languages: LANGUAGES };
  const world = { journal, hub: createHub(), clock, ...rest };
  const running = await run(world, new Hono(), { host: "127.0.0.1", port: 0, secure: null, demo: false, passphrase: null });
  const agent = new Agent({ keepAlive: true, maxSockets: 1 });
  const [answer] = (await once(get(`${running.url}jobs.json`, { agent }), "response")) as [IncomingMessage];
  const { socket } = answer;
  answer.resume();
  await once(answer, "end");
  expect([answer.headers["keep-alive"], socket.destroyed]).toEqual(["timeout=60", false]);
  const over = once(socket, "close");
  await running.close();
  await over;
});
