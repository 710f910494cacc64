import { meetsLimit } from "../install/checks/any-check.ts";
import type { Gate, Value } from "../install/gates.ts";
import { endsOf, LENGTHS } from "../site/lengths.ts";
import { tapedFt } from "./orderly.ts";
import type { Seeded } from "./seeded.ts";

/** How far beyond a limit a thing is found, as a share of it, and at least so much: near enough to be argued about. */
const SHARE = 0.25;
const AT_LEAST = 0.5;

/**
 * What is to be seen at a gate where something is wrong, near its limit: an inch too high, one too few, a tape read a foot off.
 * `null` where its check takes nothing of that kind. It never meets the limit.
 */
export function amiss(gate: Gate, random: Seeded): Value | null {
  const value = beyond(gate, random);
  return value && !meetsLimit(gate.check, value, { answers: {} }) ? value : null;
}

function beyond({ check }: Gate, random: Seeded): Value | null {
  switch (check.kind) {
    case "yesNo":
      return { kind: "yesNo", yes: !check.good };
    case "count":
      return { kind: "count", n: check.to !== null && check.from === 0 ? check.to + random.int(1, 2) : check.from - 1 };
    case "measure":
      return { kind: "measure", unit: check.unit, n: past(check.from, check.to) };
    case "lengths": {
      // A foot off, which is how a tape is misread; never one that the baseline is laid by.
      const name = random.pick(LENGTHS.filter((length) => !endsOf(length).every((corner) => corner === "A" || corner === "B")));
      const ft = tapedFt(check);
      return { kind: "lengths", ft: { ...ft, [name]: ft[name]! + random.pick([-1, 1]) } };
    }
    case "figures": {
      const off = random.pick(check.names);
      const n = Object.fromEntries(check.names.map((name) => [name, check.want[name]!.from ?? check.want[name]!.to ?? 0]));
      const { from, to } = check.want[off]!;
      return { kind: "figures", unit: check.unit, n: { ...n, [off]: check.unit === "count" ? (from ?? 1) - 1 : past(from, to) } };
    }
    case "document":
      return check.expected === null ? null : { kind: "document", named: `${check.expected}-${random.pick(["A", "B", "C"])}` };
    default:
      return null;
  }
}

/** Over a limit's upper side, or else under its lower one, to a quarter. */
function past(from: number | null, to: number | null): number {
  const by = (limit: number) => Math.max(AT_LEAST, Math.round(limit * SHARE * 4) / 4);
  return to === null ? Math.max(0, (from ?? 0) - by(from ?? 0)) : Math.round((to + by(to)) * 4) / 4;
}
