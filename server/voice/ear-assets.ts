import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { gzipSync } from "node:zlib";
import { buildSync } from "esbuild";
import { type Context, Hono } from "hono";
import { type EarFile, type EarFiles, ENGINE_WASM, NOISE_WASM } from "../../views/voice/own/messages.ts";
import { engineFiles, noiseWasm } from "./engine-files.ts";
import { wav } from "./wav.ts";

declare module "hono" {
  interface ContextVariableMap {
    /** The content security policy of what is served, where it is not the pages' own. */
    policy: string | undefined;
  }
}

/** Where the files of the ear lie; each has the version of all in its path. */
const FOLDER = "/assets/ear";
/** Where the engine finds its model. */
const MODEL = "/model";
const WASM = "application/wasm";
const BYTES = "application/octet-stream";
const SCRIPT = "text/javascript; charset=utf-8";

/** One file as it is served. `policy` is what a worker may do: it takes that from its own response. */
type Served = { readonly name: string; readonly type: string; readonly body: Uint8Array; readonly policy?: string };
type Ear = { readonly files: EarFiles; readonly served: ReadonlyMap<string, Served & { readonly zipped: Uint8Array }> };

const own = (path: string) => fileURLToPath(new URL(`../../views/voice/own/${path}`, import.meta.url));
const sha256 = (body: Uint8Array) => createHash("sha256").update(body).digest("hex");

function script(file: string): Uint8Array {
  const { outputFiles } = buildSync({
    entryPoints: [own(file)],
    bundle: true,
    minify: true,
    format: "iife",
    target: "es2022",
    write: false,
  });
  return outputFiles[0]!.contents;
}

/** Everything that a phone needs to listen by itself, read and compressed once. */
function readEar(): Ear {
  const engine = engineFiles();
  const mayRun = ["'self'", "'wasm-unsafe-eval'", ...(engine.needsEval ? ["'unsafe-eval'"] : [])].join(" ");
  const scripts: Served[] = [
    { name: "worker.js", type: SCRIPT, body: script("worker.ts"), policy: `default-src 'self'; script-src ${mayRun}` },
    { name: "worklet.js", type: SCRIPT, body: script("worklet.ts") },
    { name: "engine.js", type: SCRIPT, body: readFileSync(engine.glue) },
  ];
  const data: Served[] = [
    { name: ENGINE_WASM, type: WASM, body: readFileSync(engine.wasm) },
    { name: NOISE_WASM, type: WASM, body: readFileSync(noiseWasm) },
    ...Object.entries(engine.model ?? {}).map(([name, file]) => ({ name: `${MODEL}/${name}`, type: BYTES, body: readFileSync(file) })),
  ];
  const all = [...scripts, ...data];
  const version = sha256(Buffer.concat(all.map(({ body }) => Buffer.from(sha256(body))))).slice(0, 12);
  const path = (name: string) => `${FOLDER}/${version}/${name.split("/").at(-1)}`;
  const kept = data.map(({ name, body }): EarFile => ({ name, path: path(name), bytes: body.length, sha256: sha256(body) }));
  return {
    files: {
      is: engine.is,
      version,
      worker: path("worker.js"),
      worklet: path("worklet.js"),
      engine: path("engine.js"),
      model: engine.model && MODEL,
      files: kept,
    },
    served: new Map(all.map((file) => [path(file.name), { ...file, zipped: gzipSync(file.body) }])),
  };
}

/** Six seconds of nothing: browsers give a headset's key to no page that plays less than five. */
const SILENCE_RATE = 8000;
const silence = () => wav(Buffer.alloc(6 * SILENCE_RATE, 128), SILENCE_RATE, 8);

/** Serves the ear: what it is made of at `/assets/ear.json`, and each file. Read when it is first asked for. */
export function earAssets(takesGzip: (c: Context) => boolean): Hono {
  let read: Ear | undefined;
  const ear = () => {
    read ??= readEar();
    return read;
  };
  const app = new Hono();
  app.get(`${FOLDER}.json`, (c) => c.json(ear().files, 200, { "cache-control": "no-cache" }));
  app.get("/assets/silence.wav", (c) => c.body(silence(), 200, { "content-type": "audio/wav", "cache-control": "public, max-age=86400" }));
  app.get(`${FOLDER}/:version/:name`, (c, next) => {
    const file = ear().served.get(c.req.path);
    if (!file) return next();
    const headers = {
      "content-type": file.type,
      "cache-control": "public, max-age=31536000, immutable",
      vary: "accept-encoding",
    };
    c.set("policy", file.policy);
    const body = (bytes: Uint8Array) => bytes as Uint8Array<ArrayBuffer>;
    return takesGzip(c)
      ? c.body(body(file.zipped), 200, { ...headers, "content-encoding": "gzip" })
      : c.body(body(file.body), 200, headers);
  });
  return app;
}
