import { createPrivateKey, X509Certificate } from "node:crypto";
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { fingerprintOf } from "../../server/https/fingerprint.ts";
import { signed } from "../../server/https/sign.ts";
import { folderBeside, siteOf } from "../../server/https/site.ts";
import { scratchFolder } from "../support/scratch.ts";

const DAY_MS = 24 * 3600 * 1000;
const MORNING = new Date("2026-06-02T12:00:00Z");
const later = (days: number) => new Date(MORNING.getTime() + days * DAY_MS);
const MACHINE = { host: "truck-1", addresses: ["192.168.1.20", "fd00:0:1::22", "fe80::7"] };

let folder: string;
beforeEach(() => {
  folder = scratchFolder("site");
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const file = () => join(folder, "tents.db");
const kept = (name: string) => join(folderBeside(file()), name);
const started = ({ machine = MACHINE, now = MORNING, host = "0.0.0.0" } = {}) => siteOf({ file: file(), host, machine, now });
/** As it is started, with certificates that can be asked. */
async function read(...given: Parameters<typeof started>) {
  const site = await started(...given);
  return { ...site, authority: new X509Certificate(site.authority), own: new X509Certificate(site.own.certificate), pair: site.own };
}
const modeOf = (path: string) => statSync(path).mode & 0o777;

describe("the site's authority", () => {
  it("lies in a folder beside the data file, for its owner alone", async () => {
    await started();
    expect(kept("")).toBe(`${folder}/tents-https`);
    expect(readdirSync(folder)).toEqual(["tents-https"]);
    expect(readdirSync(kept("")).sort()).toEqual(["authority.crt", "authority.key", "server.pem"]);
    expect([kept(""), kept("authority.key"), kept("server.pem")].map(modeOf)).toEqual([0o700, 0o600, 0o600]);
  });

  it("is an authority by its certificate, says whose it is, and lasts ten years", async () => {
    const { authority } = await read();
    expect(authority.ca).toBe(true);
    expect(authority.subject).toBe("CN=Ridgecall site authority truck-1");
    expect(authority.verify(authority.publicKey)).toBe(true);
    expect(authority.checkPrivateKey(createPrivateKey(readFileSync(kept("authority.key"))))).toBe(true);
    expect([new Date(authority.validFrom), new Date(authority.validTo)]).toEqual([later(-1), new Date("2036-06-02T12:00:00Z")]);
  });

  it("is made in a folder that is there and empty", async () => {
    mkdirSync(kept(""));
    expect((await read()).authority.ca).toBe(true);
    expect(modeOf(kept(""))).toBe(0o700);
  });

  it.each([
    ["a name with signs that no certificate takes", 'the "yard", box+1=2', "CN=Ridgecall site authority theyardbox12"],
    ["no name", "", "CN=Ridgecall site authority"],
    ["a name too long for a certificate", "x".repeat(64), `CN=Ridgecall site authority ${"x".repeat(39)}`],
  ])("is made on a machine with %s", async (_, host, subject) => {
    const { authority, own } = await read({ machine: { ...MACHINE, host } });
    expect(authority.subject).toBe(subject);
    expect(own.checkIP("192.168.1.20")).toBe("192.168.1.20");
  });

  it("is told apart by its fingerprint, which is that of the bytes that a phone gets", async () => {
    const { authority } = await read();
    expect(fingerprintOf(authority.toString())).toBe(authority.fingerprint256);
    expect(fingerprintOf(authority.toString())).toMatch(/^(?:[\dA-F]{2}:){31}[\dA-F]{2}$/);
  });
});

describe("the machine's certificate", () => {
  it("is signed by the authority, for this machine only, with the key that it is kept with", async () => {
    const { authority, own, pair } = await read();
    expect(own.checkIssued(authority)).toBe(true);
    expect(own.verify(authority.publicKey)).toBe(true);
    expect(own.checkPrivateKey(createPrivateKey(pair.key))).toBe(true);
    expect(own.ca).toBe(false);
    // Node names the extended use by its number: that of a server (RFC 5280, 4.2.1.12).
    expect(own.keyUsage).toEqual(["1.3.6.1.5.5.7.3.1"]);
  });

  it("covers localhost, the machine's names and every address", async () => {
    const { own } = await read();
    expect(own.subjectAltName).toBe(
      "DNS:localhost, DNS:truck-1, DNS:truck-1.local, IP Address:127.0.0.1, IP Address:0:0:0:0:0:0:0:1, " +
        "IP Address:192.168.1.20, IP Address:FD00:0:1:0:0:0:0:22, IP Address:FE80:0:0:0:0:0:0:7",
    );
  });

  it("covers the name or the address that the server was told to listen on", async () => {
    expect((await read({ host: "guide.yard.example" })).own.checkHost("guide.yard.example")).toBe("guide.yard.example");
    expect((await read({ host: "172.20.0.9" })).own.checkIP("172.20.0.9")).toBe("172.20.0.9");
  });

  it("lasts no longer than phones allow, and no longer than the authority", async () => {
    const { own } = await read();
    const days = (Date.parse(own.validTo) - Date.parse(own.validFrom)) / DAY_MS;
    expect(days).toBeGreaterThan(365);
    expect(days).toBeLessThanOrEqual(398);
    const last = await read({ now: later(3500) });
    expect(last.own.validTo).toBe(last.authority.validTo);
  });
});

describe("at another start", () => {
  it("both are as they were", async () => {
    const first = await started();
    expect(await started({ now: later(300) })).toEqual(first);
  });

  it.each([
    ["has another address", { machine: { ...MACHINE, addresses: ["10.0.0.4", ...MACHINE.addresses] } }],
    ["has another name", { machine: { ...MACHINE, host: "truck-2" } }],
    ["listens on a name of its own", { host: "guide.yard.example" }],
    ["is started with fewer than thirty days left", { now: later(367) }],
  ])("the certificate is made anew where the machine %s, by the same authority", async (_, given) => {
    const before = await read();
    const after = await read(given);
    expect(after.authority.raw).toEqual(before.authority.raw);
    expect(after.own.serialNumber).not.toBe(before.own.serialNumber);
    expect(after.own.checkIssued(after.authority) && after.own.verify(after.authority.publicKey)).toBe(true);
    expect((await started(given)).own).toEqual(after.pair);
  });

  it("the certificate is made anew where it begins later: the machine's clock was ahead when it was made", async () => {
    await started();
    rmSync(kept("server.pem"));
    const ahead = await read({ now: later(40) });
    const after = await read();
    expect(after.own.serialNumber).not.toBe(ahead.own.serialNumber);
    expect(new Date(after.own.validFrom)).toEqual(later(-1));
  });

  it("an address less leaves the certificate as it was", async () => {
    const first = await started();
    expect((await started({ machine: { ...MACHINE, addresses: [] } })).own).toEqual(first.own);
  });

  it.each(["not a certificate", ""])("the certificate is made anew where what was kept is %j", async (text) => {
    await started();
    writeFileSync(kept("server.pem"), text);
    const { authority, own } = await read();
    expect(own.verify(authority.publicKey)).toBe(true);
    expect(modeOf(kept("server.pem"))).toBe(0o600);
  });

  it("the certificate is made anew where another authority signed it, even one of the same name", async () => {
    await started();
    const strange = readFileSync(kept("server.pem"), "utf8");
    rmSync(kept(""), { recursive: true });
    await started();
    writeFileSync(kept("server.pem"), strange);
    const { authority, own } = await read();
    expect(own.verify(authority.publicKey)).toBe(true);
  });
});

describe("an authority that cannot be used is told in one sentence and left as it is", () => {
  const back =
    /; put your copy of \S+tents-https back, or move it away to have a new authority made, which every phone must then be told to trust\.$/;
  /** What it says, once it was started and `spoil` was done to it. */
  async function complaint(spoil: () => void | Promise<void>, now = MORNING): Promise<string> {
    await started();
    await spoil();
    const before = contents();
    const error = await started({ now }).catch((error: Error) => error);
    expect(contents()).toEqual(before);
    expect(error).toMatchObject({ name: "CertificateUnusable" });
    return (error as Error).message;
  }
  const contents = () => readdirSync(kept("")).map((name) => [name, statSync(kept(name)).isFile() && readFileSync(kept(name), "utf8")]);

  it.each(["authority.crt", "authority.key"])("%s is gone", async (name) => {
    const said = await complaint(() => rmSync(kept(name)));
    expect(said).toContain(`file ${kept(name)} is missing`);
    expect(said).toMatch(back);
  });
  it.each(["authority.crt", "authority.key"])("%s is damaged", async (name) => {
    const said = await complaint(() => writeFileSync(kept(name), readFileSync(kept(name), "utf8").slice(0, 90)));
    expect(said).toContain(`file ${kept(name)} is damaged`);
    expect(said).toMatch(back);
  });
  it.each(["authority.crt", "authority.key", "server.pem"])("%s cannot be read", async (name) => {
    const said = await complaint(() => {
      rmSync(kept(name));
      mkdirSync(kept(name));
    });
    expect(said).toBe(
      `${kept(name)}, which is kept for https, cannot be read (EISDIR: illegal operation on a directory); check that you may read it.`,
    );
  });
  it("a key of another", async () => {
    const said = await complaint(async () => {
      const other = await signed({ name: "other", from: MORNING, until: later(9), extensions: [], by: null });
      writeFileSync(kept("authority.key"), other.key);
    });
    expect(said).toContain(`key in ${kept("authority.key")} does not belong`);
    expect(said).toMatch(back);
  });
  it("a certificate that is no authority's", async () => {
    const said = await complaint(() => writeFileSync(kept("authority.crt"), readFileSync(kept("server.pem"))));
    expect(said).toContain("is not an authority's");
  });
  it("one that has ended", async () => {
    const said = await complaint(() => {}, later(3660));
    expect(said).toContain("ended on 2036-06-02; ");
    expect(said).toMatch(back);
  });
  it("one that begins only later: the machine's clock is wrong", async () => {
    expect(await complaint(() => {}, later(-400))).toMatch(
      /begins on 2026-06-01, which is still to come by this machine's clock; set the clock\.$/,
    );
  });
  it("a folder that is a file", async () => {
    writeFileSync(join(folder, "tents-https"), "");
    await expect(started()).rejects.toThrow(/tents-https, which is kept for https, cannot be read \(ENOTDIR/);
  });
  it("no folder to put it in", async () => {
    const given = { file: join(folder, "away", "tents.db"), host: "0.0.0.0", machine: MACHINE, now: MORNING };
    await expect(siteOf(given)).rejects.toThrow(
      /away\/tents-https cannot be written for https \(ENOENT: no such file or directory\); check/,
    );
    expect(existsSync(join(folder, "away"))).toBe(false);
  });
});
