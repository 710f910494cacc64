import { describe, expect, it } from "vitest";
import { readConfig } from "../../server/config.ts";

const FILES = { RIDGECALL_CERTIFICATE: "a.crt", RIDGECALL_KEY: "a.key" };

describe("how the server is started", () => {
  it("by itself it listens for this machine only, over http", () => {
    expect(readConfig({}, [])).toMatchObject({ host: "127.0.0.1", tls: null });
  });
  it("with --https it listens for the site's network, with a certificate of its own", () => {
    expect(readConfig({}, ["--https"])).toMatchObject({ host: "0.0.0.0", tls: "site" });
    expect(readConfig({ HOST: "10.0.0.4" }, ["--https"])).toMatchObject({ host: "10.0.0.4", tls: "site" });
  });
  it("with a certificate and its key it takes those", () => {
    expect(readConfig(FILES, [])).toMatchObject({ host: "127.0.0.1", tls: { certificate: "a.crt", key: "a.key" } });
  });
  it.each([FILES, { RIDGECALL_CERTIFICATE: "a.crt" }, { RIDGECALL_KEY: "a.key" }])("not with --https and %j", (env) =>
    expect(() => readConfig(env, ["--https"])).toThrow(/^--https has a certificate of its own; leave .* unset, or leave --https out\.$/),
  );
  it.each([
    [["--htps"], "--htps"],
    [["--https", "tents.db"], "tents.db"],
    [["--https=yes"], "--https=yes"],
  ])("not with %j", (args, named) => expect(() => readConfig({}, args)).toThrow(`"${named}" is not known here`));
});
