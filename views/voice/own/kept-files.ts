import type { EarFile, EarFiles, EngineTrouble } from "./messages.ts";

/** Why a file cannot be had. */
export class NoFile extends Error {
  readonly trouble: EngineTrouble;
  constructor(trouble: EngineTrouble, path: string) {
    super(`${trouble}: ${path}`);
    this.trouble = trouble;
  }
}

/** All that this phone keeps of the ear is under names that begin so. */
const KEPT = "ridgecall-ear-";

/**
 * The files of the engine, each fetched once and kept on this phone. One that is not whole is fetched once more. Throws `NoFile` where one
 * cannot be had.
 */
export async function keptFiles({ version, files }: EarFiles): Promise<ReadonlyMap<string, Uint8Array>> {
  // A private window may keep nothing: then they are fetched each time.
  const cache = await caches.open(`${KEPT}${version}`).catch(() => null);
  const all = new Map(await Promise.all(files.map(async (file) => [file.name, await whole(file, cache)] as const)));
  for (const old of cache ? await caches.keys() : []) if (old.startsWith(KEPT) && old !== `${KEPT}${version}`) await caches.delete(old);
  return all;
}

async function whole(file: EarFile, cache: Cache | null): Promise<Uint8Array> {
  const kept = await cache?.match(file.path);
  if (kept) {
    const bytes = await bytesOf(kept);
    if (await isWhole(file, bytes)) return bytes;
    await cache?.delete(file.path);
  }
  const response = await fetch(file.path, { cache: kept ? "reload" : "default" }).catch(() => null);
  if (!response?.ok) throw new NoFile("filesMissing", file.path);
  const copy = response.clone();
  const bytes = await bytesOf(response);
  if (!(await isWhole(file, bytes))) throw new NoFile("filesBroken", file.path);
  await cache?.put(file.path, copy).catch(() => {});
  return bytes;
}

/** What breaks off on its way is as short as it came. */
const bytesOf = async (response: Response): Promise<Uint8Array> =>
  new Uint8Array(await response.arrayBuffer().catch(() => new ArrayBuffer(0)));

async function isWhole({ bytes, sha256 }: EarFile, is: Uint8Array): Promise<boolean> {
  if (is.length !== bytes) return false;
  const digest = new Uint8Array(await crypto.subtle.digest("SHA-256", is as Uint8Array<ArrayBuffer>));
  return Array.from(digest, (byte) => byte.toString(16).padStart(2, "0")).join("") === sha256;
}
