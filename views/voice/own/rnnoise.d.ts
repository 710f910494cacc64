/** The package brings no types. */
declare module "@jitsi/rnnoise-wasm/dist/rnnoise.js" {
  export default function createNoiseModule(options: { wasmBinary: Uint8Array | undefined }): Promise<object>;
}
