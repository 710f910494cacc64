import { expect, it } from "vitest";
import { fitsPassphrase } from "../../server/access/passphrase.ts";

/** RFC 7914, section 12, third vector: "pleaseletmein" with "SodiumChloride", N 16384, r 8, p 1; its first 32 bytes. */
const PUBLISHED = {
  passphrase: "pleaseletmein",
  kept: `scrypt$14$8$1$${Buffer.from("SodiumChloride").toString("hex")}$7023bdcb3afd7348461c06cd81fd38ebfda8fbba904f8e3ea9b543f6545da1f2`,
};

it("a passphrase is hashed as RFC 7914 says", async () => {
  expect(await fitsPassphrase(PUBLISHED.passphrase, PUBLISHED.kept)).toBe(true);
  expect(await fitsPassphrase("pleaseletmeout", PUBLISHED.kept)).toBe(false);
});
