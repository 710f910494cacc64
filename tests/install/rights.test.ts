import { describe, expect, it } from "vitest";
import type { Role } from "../../machines/install/brief.ts";
import type { Intent } from "../../machines/install/commands.ts";
import { decide } from "../../machines/install/decide.ts";
import type { Found } from "../../machines/install/found.ts";
import { foundIn } from "../../machines/install/found-in.ts";
import { openJob } from "../../machines/install/job.ts";
import { MAY } from "../../machines/install/rights.ts";
import { ROLES } from "../../machines/install/roles.ts";
import { briefOf, commandOf, frozenOf, PEOPLE, SMALL, START } from "../proof/fixtures.ts";
import { KeptJob } from "../support/kept-job.ts";

const frozen = frozenOf(briefOf(SMALL));
const EVERYBODY = [...ROLES];
const DRIVERS = ["lead", "deputy"];
const ANSWERS_FOR_IT = ["lead", "deputy", "competent"];
const torn = { thing: { is: "piece", id: "top" }, because: "torn" } as const;

const WIRE: Found = { is: "overhead", line: { id: "overhead 1", kv: 7.2, lowestFt: null, errorFt: 0, points: [{ xFt: 90, yFt: 0 }, { xFt: 90, yFt: 50 }] } }; // biome-ignore format: one line reads best
const PICTURE = { gate: null, hash: "0".repeat(64), mime: "image/jpeg", bytes: 1000, widthPx: 640, heightPx: 480, text: null } as const;

/** Who may ask what, written down by hand: each with a command that nothing but a role stands against, or of which it is the first. */
const BY_HAND: readonly (readonly [Intent, readonly string[]])[] = [
  [{ type: "hold" }, EVERYBODY],
  [{ type: "pause" }, EVERYBODY],
  [{ type: "hurt", words: "a hand" }, EVERYBODY],
  [{ type: "makeSafe", because: "a squall" }, EVERYBODY],
  [{ type: "outOfUse", ...torn }, EVERYBODY],
  [{ type: "found", what: WIRE, to: foundIn(frozen, WIRE) }, EVERYBODY],
  [{ type: "reading", reading: { kind: "thunder", takenAt: START } }, EVERYBODY],
  [{ type: "reading", reading: { kind: "rain", takenAt: START } }, EVERYBODY],
  [{ type: "correct", target: 1 }, EVERYBODY],
  [{ type: "wrong", target: 1 }, EVERYBODY],
  [{ type: "note", text: "the gate is open" }, EVERYBODY.filter((role) => role !== "trainee")],
  [{ type: "photo", ...PICTURE }, EVERYBODY.filter((role) => role !== "trainee")],
  [
    { type: "unfitPhoto", gate: null, text: null, unfit: { is: "none", came: "pdf" }, bytes: 9 },
    EVERYBODY.filter((role) => role !== "trainee"),
  ],
  [{ type: "next" }, DRIVERS],
  [{ type: "back" }, DRIVERS],
  [{ type: "carryOn", became: null }, DRIVERS],
  [{ type: "standDown", because: "called off" }, DRIVERS],
  [{ type: "waive", gate: "sheet.atHand", because: "none" }, DRIVERS],
  [{ type: "amend", because: "first aid moved", to: frozen }, DRIVERS],
  [{ type: "takeLead" }, ["deputy"]],
  [{ type: "backInUse", ...torn }, ANSWERS_FOR_IT],
  [{ type: "reading", reading: { kind: "wind", mph: 5, gustMph: 8, fromDeg: null, takenAt: START, place: null } }, ANSWERS_FOR_IT],
];

describe.each(BY_HAND)("$type", (ask, may) => {
  it.each(ROLES)("by a %s is taken, or refused for the role", (role) => {
    const [, outcome] = decide(openJob(frozen, START), commandOf(ask, START + 1000, 2, 1, role));
    const forRole = "refused" in outcome && outcome.refused.some(({ why }) => why === "role");
    expect(forRole).toBe(!may.includes(role));
  });
});

it("the change that waits is agreed to, or dropped, by those who answer for it", () => {
  for (const type of ["agree", "disagree"] as const)
    for (const role of ROLES) {
      const [proposed] = decide(
        openJob(frozen, START),
        commandOf({ type: "amend", because: "moved", to: frozen }, START + 1000, 2, 1, "lead"),
      );
      const by = role === "lead" ? "p9" : PEOPLE[role];
      const [, outcome] = decide(proposed, commandOf({ type, target: 2 }, START + 2000, 3, 2, role, by));
      const refused = "refused" in outcome && outcome.refused.some(({ why }) => why === "role");
      expect([type, role, refused]).toEqual([type, role, !ANSWERS_FOR_IT.includes(role)]);
    }
});

it("every command there is stands in the table, and a hold of anybody is in it", () => {
  const tried = new Set([...BY_HAND.map(([{ type }]) => type), "agree", "disagree", "answer", "readBack"]);
  expect(Object.keys(MAY).filter((type) => !tried.has(type as Intent["type"]))).toEqual([]);
});

describe("the deputy takes the lead", () => {
  const led = () => {
    const kept = new KeptJob(briefOf(SMALL));
    return { kept, roleOf: (person: string): Role | undefined => kept.job.frozen.brief.crew.find(({ id }) => id === person)?.role };
  };
  it("in one command, and who led is deputy", () => {
    const { kept, roleOf } = led();
    expect(kept.say({ type: "takeLead" }, "deputy").outcome).toEqual({ did: "tookLead" });
    expect([roleOf(PEOPLE.deputy), roleOf(PEOPLE.lead)]).toEqual(["lead", "deputy"]);
  });
  it("with the job where it was: the call, its answers, the hold", () => {
    const { kept } = led();
    kept.goOn();
    kept.say({ type: "hold" }, "crew");
    const before = kept.job.snapshot;
    kept.say({ type: "takeLead" }, "deputy");
    expect([kept.job.snapshot.value, kept.job.snapshot.context.answers]).toEqual([before.value, before.context.answers]);
  });
  it("and a change that waited was made for the job as it was led before: it waits no more", () => {
    const { kept } = led();
    kept.say({ type: "amend", because: "first aid moved", to: frozen }, "lead");
    kept.say({ type: "takeLead" }, "deputy");
    expect([kept.job.proposed, kept.job.snapshot.context.proposed]).toEqual([null, null]);
  });
});
