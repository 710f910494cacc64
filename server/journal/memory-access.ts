import { type AccessStore, type JoinCode, MAX_EVENTS, type Pass, type SecurityEvent, type Token } from "./access.ts";

/** Who may come in, for as long as the program lasts. */
export function memoryAccess(): AccessStore {
  const secrets = new Map<string, string>();
  const codes = new Map<string, JoinCode>();
  const passes = new Map<string, Pass>();
  const tokens = new Map<string, Token>();
  const events: SecurityEvent[] = [];
  const nameOf = ({ device, job, person }: Pass) => JSON.stringify([device, job, person]);
  const codesOf = (job: string) => [...codes.values()].filter((one) => one.job === job);
  return {
    secret: async (name) => secrets.get(name) ?? null,
    keepSecret: async (name, value) => void secrets.set(name, value),
    codes: async (job) => codesOf(job),
    codeCalled: async (code) => codes.get(code) ?? null,
    keepCodes: async (job, made) => {
      for (const { code } of codesOf(job)) codes.delete(code);
      for (const one of made) codes.set(one.code, one);
    },
    passes: async (device) => [...passes.values()].filter((pass) => pass.device === device),
    keepPasses: async (made) => {
      for (const pass of made) passes.set(nameOf(pass), pass);
    },
    dropPasses: async (device, job) => {
      for (const [name, pass] of passes) if (pass.device === device && pass.job === job) passes.delete(name);
    },
    allPasses: async () => [...passes.values()],
    dropAllPasses: async (job) => {
      for (const [name, pass] of passes) if (pass.job === job) passes.delete(name);
    },
    tokens: async () => [...tokens.values()],
    keepToken: async (token) => void tokens.set(token.id, token),
    log: async (event) => {
      events.push(event);
      if (events.length > MAX_EVENTS) events.shift();
    },
    events: async (count) => events.slice(-count).reverse(),
  };
}
