import type { EngineModule } from "./decoder.ts";

/** The engine's module while it loads itself. */
type Loading = EngineModule & {
  FS_createPath(parent: string, path: string, canRead: boolean, canWrite: boolean): void;
  FS_createDataFile(parent: string, name: string, data: Uint8Array, canRead: boolean, canWrite: boolean): void;
};

/**
 * Loads the engine: its glue finds what it needs in an object that `run` hands to it. `model` is the folder in which the engine will look for
 * its model, and `files` what is in there by their names; `null` where one is inside the glue. Rejects where the engine gives up.
 */
export function loadEngine(
  wasmBinary: Uint8Array,
  model: { readonly folder: string; readonly files: ReadonlyMap<string, Uint8Array> } | null,
  run: (module: object) => void,
): Promise<{ readonly module: EngineModule }> {
  return new Promise((resolve, reject) => {
    const module = {
      wasmBinary,
      print: () => {},
      printErr: () => {},
      onAbort: (why: unknown) => reject(new Error(`the engine gave up: ${why}`)),
      // In a box: some builds of such modules look like promises.
      onRuntimeInitialized: () => resolve({ module: module as unknown as EngineModule }),
      preRun: [
        () => {
          if (!model) return;
          const { FS_createPath, FS_createDataFile } = module as unknown as Loading;
          FS_createPath("/", model.folder.slice(1), true, true);
          for (const [name, data] of model.files) FS_createDataFile(model.folder, name, data, true, true);
        },
      ],
    };
    run(module);
  });
}
