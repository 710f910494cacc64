import type { NetworkInterfaceInfo } from "node:os";
import { describe, expect, it } from "vitest";
import { coveredBy, machineOf, reachedAt, urlOf } from "../../server/https/machine.ts";

const at = (address: string, internal = false) => ({ address, internal }) as NetworkInterfaceInfo;
const machine = machineOf("Truck-1.yard.example", {
  lo: [at("127.0.0.1", true), at("::1", true)],
  bridge: [at("172.17.0.1"), at("fe80::1%bridge")],
  cable: [at("169.254.3.4"), at("10.0.0.4"), at("2001:db8::5")],
  radio: [at("192.168.1.20"), at("fe80::1")],
  gone: undefined,
});

describe("the machine's addresses", () => {
  it("are those that others can reach, each once, the likeliest to be the site's first", () => {
    expect(machine.addresses).toEqual(["192.168.1.20", "10.0.0.4", "172.17.0.1", "2001:db8::5", "169.254.3.4", "fe80::1"]);
  });

  it.each([
    ["", ["192.168.1.20", "10.0.0.4", "172.17.0.1", "169.254.3.4"]],
    ["0.0.0.0", ["192.168.1.20", "10.0.0.4", "172.17.0.1", "169.254.3.4"]],
    ["::", ["192.168.1.20", "10.0.0.4", "172.17.0.1", "2001:db8::5", "169.254.3.4"]],
    ["10.0.0.4", ["10.0.0.4"]],
    ["truck.example", ["truck.example"]],
    ["127.0.0.1", []],
    ["::1", []],
    ["localhost", []],
  ])("a phone finds a server that listens on %j at %j", (listensOn, hosts) => expect(reachedAt(machine, listensOn)).toEqual(hosts));

  it("are covered with its names, in small letters, and the name under which phones find it without a name server", () => {
    const names = ["localhost", "truck-1.yard.example", "truck-1.local"];
    expect(coveredBy(machine, "0.0.0.0")).toEqual({ names, addresses: ["127.0.0.1", "::1", ...machine.addresses] });
    expect(coveredBy({ host: "localhost", addresses: [] }, "localhost")).toEqual({
      names: ["localhost", "localhost.local"],
      addresses: ["127.0.0.1", "::1"],
    });
    expect(coveredBy({ host: "my own box_", addresses: [] }, "::").names).toEqual(["localhost"]);
  });

  it.each([
    ["http", "127.0.0.1", "http://127.0.0.1:4160/"],
    ["https", "0.0.0.0", "https://127.0.0.1:4160/"],
    ["https", "::", "https://[::1]:4160/"],
    ["https", "2001:db8::5", "https://[2001:db8::5]:4160/"],
    ["https", "truck.example", "https://truck.example:4160/"],
  ] as const)("%s on %s is opened at %s", (scheme, listensOn, url) => expect(urlOf(scheme, listensOn, 4160)).toBe(url));
});
