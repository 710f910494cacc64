import { spawn } from "node:child_process";
import { once } from "node:events";
import { Agent, request } from "node:http";

/**
 * What the program costs over HTTP beside bare routes that answer with as much. Prints ratios, which say more than times on a
 * machine that does other things too: both sides are asked in turn, for a while each, and the middle one of several rounds counts.
 */
const ROUNDS = 5;
const ROUND_MS = 1500;

type Served = { readonly ours: number; readonly bare: number; readonly jobs: string[]; readonly fresh: string; readonly long: string };
type Asked = { readonly port: number; readonly path: (n: number) => string; readonly body?: () => string };
type Measured = { readonly perSecond: number; readonly p99: number };

const server = spawn(process.execPath, ["--import", "tsx", "tests/bench/serve.tsx"], { stdio: ["ignore", "pipe", "inherit"] });
const { ours, bare, jobs, fresh, long } = JSON.parse(String((await once(server.stdout, "data"))[0])) as Served;

const HEADERS = {
  "content-type": "application/x-www-form-urlencoded",
  "hx-request-type": "partial",
  cookie: "device=bench-device; as-x=p1",
} as const;
let keys = 0;
const note = () => `as=p1&seen=1&key=bench-${String(++keys).padStart(8, "0")}&type=note&text=all+standing+round+the+cab`;
const sayTo = (...to: string[]): Asked => ({ port: ours, path: (n) => `/jobs/${to[n % to.length]}/say`, body: note });
const guideOf = (job: string): Asked => ({ port: ours, path: () => `/jobs/${job}` });
const bareSay: Asked = { port: bare, path: () => "/say", body: note };
const bareGuide: Asked = { port: bare, path: () => "/guide" };

/** Asks over so many connections at once, each again as soon as it is answered. */
async function measure({ port, path, body }: Asked, connections: number): Promise<Measured> {
  const agent = new Agent({ keepAlive: true, maxSockets: connections });
  const took: number[] = [];
  const from = performance.now();
  const worker = async (n: number) => {
    while (performance.now() - from < ROUND_MS) {
      const at = performance.now();
      await ask(agent, port, path(n), body?.());
      took.push(performance.now() - at);
    }
  };
  await Promise.all(Array.from({ length: connections }, (_, n) => worker(n)));
  agent.destroy();
  took.sort((a, b) => a - b);
  return { perSecond: (took.length * 1000) / (performance.now() - from), p99: took[Math.floor(took.length * 0.99)]! };
}
const ask = (agent: Agent, port: number, path: string, body?: string): Promise<void> =>
  new Promise((resolve, reject) => {
    const headers = { ...HEADERS, origin: `http://127.0.0.1:${port}`, ...(body === undefined ? {} : { "content-length": body.length }) };
    const asked = request({ agent, port, path, host: "127.0.0.1", method: body === undefined ? "GET" : "POST", headers }, (answer) => {
      if (answer.statusCode !== 200) reject(new Error(`${path}: ${answer.statusCode}`));
      answer.resume().once("end", resolve);
    });
    asked.once("error", reject).end(body);
  });

const middle = (of: readonly number[]) => [...of].sort((a, b) => a - b)[Math.floor(of.length / 2)]!;

/** One line: what the first costs beside the second. */
async function compare(what: string, one: Asked, other: Asked, connections: number): Promise<void> {
  const rounds: (readonly [Measured, Measured])[] = [];
  for (let n = 0; n <= ROUNDS; n++) rounds.push([await measure(one, connections), await measure(other, connections)]);
  // The first round warms both up.
  const counted = rounds.slice(1);
  const ratio = (of: (m: Measured) => number) => middle(counted.map(([a, b]) => of(a) / of(b))).toFixed(2);
  const rate = (of: 0 | 1) => Math.round(middle(counted.map((round) => round[of].perSecond)));
  console.log(
    `${what.padEnd(64)} throughput ${ratio((m) => m.perSecond)}, p99 ${ratio((m) => m.p99)}   (${rate(0)}/s beside ${rate(1)}/s)`,
  );
}

try {
  for (const connections of [1, 50]) {
    const at = `at ${connections}`;
    await compare(`say, one job, beside a bare insert and page, ${at}`, sayTo(jobs[0]!), bareSay, connections);
    await compare(`say, ten jobs, beside a bare insert and page, ${at}`, sayTo(...jobs), bareSay, connections);
    await compare(`a guide page beside its components, ${at}`, guideOf(fresh), bareGuide, connections);
  }
  await compare("say to a job of 5,000 entries beside a fresh one, at 1", sayTo(long), sayTo(fresh), 1);
  await compare("a guide page of 5,000 entries beside a fresh one, at 1", guideOf(long), guideOf(fresh), 1);
} finally {
  server.kill("SIGTERM");
}
