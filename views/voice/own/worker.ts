import createNoiseModule from "@jitsi/rnnoise-wasm/dist/rnnoise.js";
import { Decoder } from "./decoder.ts";
import { Denoiser, type NoiseModule } from "./denoiser.ts";
import { FITS } from "./fits.ts";
import { Hearing } from "./hearing.ts";
import { keptFiles, NoFile } from "./kept-files.ts";
import { loadEngine } from "./load-engine.ts";
import { type EarFiles, ENGINE_WASM, type FromWorker, NOISE_WASM, type ToWorker } from "./messages.ts";

/** The scope of a worker: of it, what is used here. */
declare const self: {
  Module?: object;
  onmessage: ((event: MessageEvent<ToWorker>) => void) | null;
  readonly postMessage: (message: FromWorker) => void;
};
declare const importScripts: (path: string) => void;

const tell = (message: FromWorker) => self.postMessage(message);
/** What comes before the engine is there waits for it. */
const hearing = new Promise<Hearing>((resolve) => {
  self.onmessage = ({ data }) => {
    if (data.is !== "load") return void hearing.then((ear) => act(ear, data)).catch(failed);
    load(data.files)
      .then((ear) => {
        resolve(ear);
        tell({ is: "ready" });
      })
      .catch(failed);
  };
});

function failed(error: unknown): void {
  console.error(error);
  tell({ is: "trouble", trouble: error instanceof NoFile ? error.trouble : "engineFailed" });
}

function act(ear: Hearing, message: Exclude<ToWorker, { is: "load" }>): void {
  switch (message.is) {
    case "sound":
      ear.begin();
      message.port.onmessage = ({ data }: MessageEvent<Float32Array>) => ear.take(data);
      return;
    case "expect":
      ear.expect(message.grammar);
      return;
    case "how":
      ear.talk = message.talk;
      ear.speaking = message.speaking;
      return;
    case "cut":
      ear.cut();
      tell({ is: "cut" });
  }
}

async function load(files: EarFiles): Promise<Hearing> {
  const kept = await keptFiles(files);
  const noise = await createNoiseModule({ wasmBinary: kept.get(NOISE_WASM) });
  const { model } = files;
  const inFolder = [...kept].flatMap(([name, data]): [string, Uint8Array][] =>
    model !== null && name.startsWith(`${model}/`) ? [[name.slice(model.length + 1), data]] : [],
  );
  const { module } = await loadEngine(
    kept.get(ENGINE_WASM)!,
    model === null ? null : { folder: model, files: new Map(inFolder) },
    (module) => {
      self.Module = module;
      importScripts(files.engine);
    },
  );
  return new Hearing({ decoder: new Decoder(module, model), fits: FITS[files.is] }, new Denoiser(noise as NoiseModule), {
    began: () => tell({ is: "began" }),
    heard: ({ words, fit, marginDb }) => tell({ is: "heard", words, fit, marginDb }),
    nothing: (why) => tell({ is: "nothing", why }),
    level: (levelDb, floorDb) => tell({ is: "level", levelDb, floorDb }),
  });
}
