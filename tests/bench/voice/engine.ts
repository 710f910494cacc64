import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { dirname } from "node:path";
import createNoiseModule from "@jitsi/rnnoise-wasm/dist/rnnoise.js";
import { engineFiles, noiseWasm } from "../../../server/voice/engine-files.ts";
import { Decoder } from "../../../views/voice/own/decoder.ts";
import { Denoiser, type NoiseModule } from "../../../views/voice/own/denoiser.ts";
import { FITS } from "../../../views/voice/own/fits.ts";
import { loadEngine } from "../../../views/voice/own/load-engine.ts";

const FOLDER = "/model";

/** The engine in Node, as a worker has it, with what takes noise out before it. */
export async function engineInNode() {
  const { glue, wasm, model, is } = engineFiles();
  const files = new Map(Object.entries(model ?? {}).map(([name, file]) => [name, new Uint8Array(readFileSync(file))]));
  const { module } = await loadEngine(readFileSync(wasm), model && { folder: FOLDER, files }, (module) => {
    const run = new Function("Module", "require", "__filename", "__dirname", readFileSync(glue, "utf8"));
    run(module, createRequire(import.meta.url), glue, dirname(glue));
  });
  const noise = (await createNoiseModule({ wasmBinary: readFileSync(noiseWasm) })) as NoiseModule;
  return { is, engine: { decoder: new Decoder(module, model && FOLDER), fits: FITS[is] }, denoiser: new Denoiser(noise) };
}
