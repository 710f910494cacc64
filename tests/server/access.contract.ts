import { describe, expect, it } from "vitest";
import { OFFICE } from "../../server/journal/access.ts";
import type { Journal } from "../../server/journal/journal.ts";

/** What is kept about who may come in, by whichever journal. */
export function accessContract(name: string, open: () => Journal): void {
  describe(`who may come in, in ${name}`, () => {
    const access = () => open().access;

    it("a secret is what was kept last", async () => {
      const store = access();
      expect(await store.secret("passphrase")).toBeNull();
      await store.keepSecret("passphrase", "one");
      await store.keepSecret("passphrase", "two");
      expect([await store.secret("passphrase"), await store.secret("cookies")]).toEqual(["two", null]);
    });
    it("a job has its codes, and new ones take their place", async () => {
      const store = access();
      await store.keepCodes("job-1", [
        { code: "AAA", job: "job-1", leads: false },
        { code: "BBB", job: "job-1", leads: true },
      ]);
      await store.keepCodes("job-2", [{ code: "CCC", job: "job-2", leads: false }]);
      await store.keepCodes("job-1", [{ code: "DDD", job: "job-1", leads: false }]);
      expect(await store.codes("job-1")).toEqual([{ code: "DDD", job: "job-1", leads: false }]);
      expect([await store.codeCalled("AAA"), (await store.codeCalled("CCC"))?.job]).toEqual([null, "job-2"]);
    });
    it("a device has its passes, renewed, and dropped of one job", async () => {
      const store = access();
      const pass = (job: string, person: string, until: number) => ({ device: "phone-1", job, person, until });
      await store.keepPasses([pass("job-1", "p1", 5), pass("job-2", "p4", 5), pass(OFFICE, OFFICE, 5)]);
      await store.keepPasses([pass("job-1", "p1", 9)]);
      await store.dropPasses("phone-1", OFFICE);
      expect((await store.passes("phone-1")).map(({ job, until }) => [job, until]).sort()).toEqual([
        ["job-1", 9],
        ["job-2", 5],
      ]);
      expect(await store.passes("phone-2")).toEqual([]);
    });
    it("a token is kept, and once revoked stays that", async () => {
      const store = access();
      const token = { id: "t1", name: "list", hash: "0".repeat(64), at: 1, revokedAt: null };
      await store.keepToken(token);
      await store.keepToken({ ...token, revokedAt: 7 });
      expect(await store.tokens()).toEqual([{ ...token, revokedAt: 7 }]);
    });
    it("the log is read from its end", async () => {
      const store = access();
      for (let at = 1; at <= 3; at++) await store.log({ at, is: "joined", address: "192.0.2.1", job: "job-1", device: null, what: null });
      expect((await store.events(2)).map(({ at }) => at)).toEqual([3, 2]);
    });
  });
}
