import { afterEach, beforeEach, describe, expect, it } from "vitest";
import type { Journal } from "../../server/journal/journal.ts";

const photo = (...bytes: number[]) => ({ mime: "image/png", bytes: Uint8Array.from(bytes) });

/** What a store promises of photos, wherever they lie. */
export function photosContract(where: string, create: () => Journal) {
  describe(`photos ${where}`, () => {
    let journal: Journal;
    beforeEach(() => {
      journal = create();
    });
    afterEach(() => journal.close());

    it("come back to the byte, in their own job only", async () => {
      await journal.photos.put("job-1", "aa", photo(0, 255, 7));
      expect(await journal.photos.get("job-1", "aa")).toEqual(photo(0, 255, 7));
      expect([await journal.photos.get("job-2", "aa"), await journal.photos.get("job-1", "ab")]).toEqual([null, null]);
    });
    it("stay as they were first put, and two jobs may have the same one", async () => {
      await journal.photos.put("job-1", "aa", photo(1));
      await journal.photos.put("job-1", "aa", photo(2));
      await journal.photos.put("job-2", "aa", photo(3));
      expect([await journal.photos.get("job-1", "aa"), await journal.photos.get("job-2", "aa")]).toEqual([photo(1), photo(3)]);
    });
    it("are no jobs: the journal beside them stays empty", async () => {
      await journal.photos.put("job-1", "aa", photo(1));
      expect(await journal.jobs()).toEqual([]);
    });
  });
}
