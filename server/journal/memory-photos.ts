import type { Photos, StoredPhoto } from "./photos.ts";

/** Photos, for as long as the program lasts. */
export function memoryPhotos(): Photos {
  const kept = new Map<string, StoredPhoto>();
  const nameOf = (job: string, hash: string) => JSON.stringify([job, hash]);
  return {
    put: async (job, hash, { mime, bytes }) => {
      const name = nameOf(job, hash);
      if (!kept.has(name)) kept.set(name, { mime, bytes: bytes.slice() });
    },
    get: async (job, hash) => {
      const photo = kept.get(nameOf(job, hash));
      return photo ? { mime: photo.mime, bytes: photo.bytes.slice() } : null;
    },
  };
}
