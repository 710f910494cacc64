import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { dirname } from "node:path";
import { type EngineFiles, engineFiles } from "../../../server/voice/engine-files.ts";
import type { EngineModule } from "../../../views/voice/own/decoder.ts";

type Loading = EngineModule & {
  FS_createPath(parent: string, path: string, canRead: boolean, canWrite: boolean): void;
  FS_createDataFile(parent: string, name: string, data: Uint8Array, canRead: boolean, canWrite: boolean): void;
};

/** The engine in Node, as a worker has it: loaded from its glue, with its model where that is not inside. */
export function loadEngine(): Promise<{ readonly files: EngineFiles; readonly module: EngineModule; readonly model: string | null }> {
  const files = engineFiles();
  return new Promise((resolve) => {
    const quiet = () => {};
    const module = {
      wasmBinary: readFileSync(files.wasm),
      print: quiet,
      printErr: quiet,
      onRuntimeInitialized: () => resolve({ files, module: module as unknown as EngineModule, model: files.model && "/model" }),
      preRun: [
        () => {
          const loading = module as unknown as Loading;
          if (!files.model) return;
          loading.FS_createPath("/", "model", true, true);
          for (const [name, file] of Object.entries(files.model))
            loading.FS_createDataFile("/model", name, new Uint8Array(readFileSync(file)), true, true);
        },
      ],
    };
    const run = new Function("Module", "require", "__filename", "__dirname", readFileSync(files.glue, "utf8"));
    run(module, createRequire(import.meta.url), files.glue, dirname(files.glue));
  });
}
