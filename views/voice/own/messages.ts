import type { EngineKind } from "./fits.ts";
import type { EarGrammar } from "./grammar.ts";
import type { HeardWords, Unheard } from "./hearing.ts";

/** One file of the engine: what it is called there, where it is fetched, and how it looks when it has come whole. */
export type EarFile = { readonly name: string; readonly path: string; readonly bytes: number; readonly sha256: string };
/**
 * Where everything is that an ear is made of. `engine` is its glue, which is run, not read; `model` is where the engine looks for the files
 * that begin with it, `null` where one is inside the glue. `version` changes with any of them.
 */
export type EarFiles = {
  readonly is: EngineKind;
  readonly version: string;
  readonly worker: string;
  readonly worklet: string;
  readonly engine: string;
  readonly model: string | null;
  readonly files: readonly EarFile[];
};
/** The names of the two binaries among them. */
export const ENGINE_WASM = "engine.wasm";
export const NOISE_WASM = "noise.wasm";

/** Why the engine cannot be had. */
export type EngineTrouble = "filesMissing" | "filesBroken" | "engineFailed";

/** What the page tells the worker. */
export type ToWorker =
  | { readonly is: "load"; readonly files: EarFiles }
  /** Where sound comes from, from now on. */
  | { readonly is: "sound"; readonly port: MessagePort }
  | { readonly is: "expect"; readonly grammar: EarGrammar }
  | { readonly is: "how"; readonly talk: boolean; readonly speaking: boolean }
  /** No more is said: answered with `cut`, after what has been said. */
  | { readonly is: "cut" };

/** What the worker tells the page. */
export type FromWorker =
  | { readonly is: "ready" }
  | { readonly is: "trouble"; readonly trouble: EngineTrouble }
  | { readonly is: "level"; readonly levelDb: number; readonly floorDb: number }
  | { readonly is: "began" }
  | ({ readonly is: "heard" } & HeardWords)
  | { readonly is: "nothing"; readonly why: Unheard }
  | { readonly is: "cut" };
