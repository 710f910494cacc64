import { spawn } from "node:child_process";
import { once } from "node:events";
import { Agent, type IncomingMessage, request } from "node:http";

/**
 * Many screens at once, on a server of its own process: how long after a hold was pressed on one of 200 screens of a job the last of
 * them shows it, and after one command on each of 50 jobs with four screens each. Prints the middle and the worst of several rounds.
 */
const SCREENS = 200;
const JOBS = 50;
const SCREENS_PER_JOB = 4;
const ROUNDS = 10;
const PEOPLE = ["p1", "p2", "p3", "p4", "p5", "p6", "p7"];

const server = spawn(process.execPath, ["--import", "tsx", "tests/bench/serve-screens.ts"], { stdio: ["ignore", "pipe", "inherit"] });
const { port, jobs } = JSON.parse(String((await once(server.stdout, "data"))[0])) as { port: number; jobs: string[] };
const agent = new Agent({ keepAlive: true, maxSockets: Number.POSITIVE_INFINITY });

type Screen = { readonly job: string; readonly shows: (entry: number) => Promise<number> };

/** A screen that follows a job; `shows` resolves, with the moment, when what it was sent is of an entry or a later one. */
async function follow(job: string, n: number): Promise<Screen> {
  let shown = 0;
  let waiting: { entry: number; done: (at: number) => void } | null = null;
  const cookie = `device=bench-screen-${n}; as-${job}=${PEOPLE[n % PEOPLE.length]}`;
  const answer = await new Promise<IncomingMessage>((resolve, reject) =>
    request({ agent, port, host: "127.0.0.1", path: `/jobs/${job}/live`, headers: { cookie } }, resolve)
      .once("error", reject)
      .end(),
  );
  answer.setEncoding("utf8").on("data", (text: string) => {
    for (const [, id] of text.matchAll(/^id: (\d+)$/gm)) shown = Math.max(shown, Number(id));
    if (waiting && shown >= waiting.entry) {
      waiting.done(performance.now());
      waiting = null;
    }
  });
  await once(answer, "data");
  return {
    job,
    shows: (entry) =>
      shown >= entry
        ? Promise.resolve(performance.now())
        : new Promise((done) => {
            waiting = { entry, done };
          }),
  };
}

let keys = 0;
/** Says something on a job; resolves with the entry that it made and when it was answered. */
async function say(job: string, fields: Readonly<Record<string, unknown>>): Promise<{ entry: number; at: number }> {
  const body = JSON.stringify({ as: "p4", key: `bench-${String(++keys).padStart(8, "0")}`, seen: 1, ...fields });
  const answer = await fetch(`http://127.0.0.1:${port}/jobs/${job}/say`, {
    method: "POST",
    headers: { "content-type": "application/json" },
    body,
  });
  const { entry } = (await answer.json()) as { entry: number };
  return { entry, at: performance.now() };
}

const middle = (of: readonly number[]) => [...of].sort((a, b) => a - b)[Math.floor(of.length / 2)]!;
const told = (ms: readonly number[]) => `middle ${Math.round(middle(ms))} ms, worst ${Math.round(Math.max(...ms))} ms`;

/** From a press to the last screen that shows it, and to the answer on the phone that was pressed. */
async function round(screens: readonly Screen[], pressed: readonly string[], ask: Readonly<Record<string, unknown>>) {
  const from = performance.now();
  const said = await Promise.all(pressed.map(async (job) => ({ job, ...(await say(job, ask)) })));
  const shown = await Promise.all(screens.map((screen) => screen.shows(said.find(({ job }) => job === screen.job)!.entry)));
  return { last: Math.max(...shown) - from, answered: Math.max(...said.map(({ at }) => at)) - from };
}

try {
  const [one = "", ...rest] = jobs;
  const crowd = await Promise.all(Array.from({ length: SCREENS }, (_, n) => follow(one, n)));
  const holds = [];
  for (let n = 0; n < ROUNDS; n++) holds.push(await round(crowd, [one], { type: "hold" }));
  console.log(`hold on one of ${SCREENS} screens of a job: answered ${told(holds.map(({ answered }) => answered))}`);
  console.log(`  on the last screen ${told(holds.map(({ last }) => last))}`);
  const many = await Promise.all(
    rest.slice(0, JOBS).flatMap((job, j) => Array.from({ length: SCREENS_PER_JOB }, (_, n) => follow(job, j * SCREENS_PER_JOB + n))),
  );
  const all = [];
  for (let n = 0; n < ROUNDS; n++) all.push(await round(many, rest.slice(0, JOBS), { type: "hold" }));
  console.log(
    `hold on each of ${JOBS} jobs at once, ${SCREENS_PER_JOB} screens each: answered ${told(all.map(({ answered }) => answered))}`,
  );
  console.log(`  on the last screen ${told(all.map(({ last }) => last))}`);
} finally {
  agent.destroy();
  server.kill();
}
