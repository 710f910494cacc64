import { describe, expect, test } from "vitest";
import { amendmentEffect } from "../../machines/install/amend.ts";
import { changesOf } from "../../machines/install/changes.ts";
import type { Frozen } from "../../machines/install/step.ts";
import { changeText } from "../../views/text/en/changes.ts";
import { briefOf, frozenOf, people } from "../proof/fixtures.ts";
import { Crew } from "../support/crew.ts";
import { forty } from "../tent/tents.ts";

const before = frozenOf(briefOf(forty));
const tent = (more: object): Frozen => frozenOf(briefOf({ ...forty, ...more }));
const told = (to: Frozen, from = before) => changesOf(from, to).map((c) => changeText(c, { name: (id) => id, zone: "America/Denver" }));

const countOf = (item: string) => before.plan.kit.find((k) => k.item === item)?.count ?? 0;
const more = (item: string, name: string, by: number) => `${name}: ${countOf(item) + by}, not ${countOf(item)}.`;

describe("what a changed plan changes, in a crew's words", () => {
  test("nothing, where nothing does", () => expect(told(frozenOf(briefOf(forty)))).toEqual([]));
  test("a ring more than the plan has: and the pole, plate, strap and stakes that it takes", () => {
    const rings = before.plan.edges[0]!.rings;
    expect(told(tent({ rings: { AB: rings + 1 } }))).toEqual([
      `AB: ${rings + 1} rings, not ${rings}.`,
      more("sidePole", "Side poles", 1),
      more("perimeterStake", "Perimeter stakes", 2),
      more("stakePlate", "Stake plates", 1),
      more("perimeterStrap", "Ratchet straps", 1),
    ]);
  });
  test("a pole more, with its place", () => {
    const texts = told(tent({ add: [{ kind: "quarter", xFt: 10, yFt: 30.5 }] }));
    expect(texts[0]).toMatch(/^One more quarter pole, \w+, 30 ft 6 in along from A and 10 ft across\.$/);
    expect(texts).toContainEqual(expect.stringMatching(/^Quarter poles: 1, not 0\.$/));
  });
  test("a pole fewer, where it stood", () => {
    const [first] = before.plan.poles;
    const texts = told(tent({ leaveOut: [first!.id] }));
    expect(texts[0]).toMatch(/^One center pole less: none \d+ ft along from A and 20 ft across\.$/);
  });
  test("a corner that stands elsewhere, by the ways a crew stands to it", () =>
    expect(told(tent({ shifted: { C: { xFt: -0.25, yFt: 0.5 } } }))).toEqual([
      "Corner C: 3 in toward the A–B side and 6 in toward the B–C end.",
    ]));
  test("another tent is told by its size, not pole by pole", () => {
    const texts = told(tent({ widthFt: 60, quarterRings: 1, lengthFt: 120, midsFt: undefined, centerPoleFt: 22 }));
    expect(texts.slice(0, 2)).toEqual(["Width, ft: 60; was 40.", "Length, ft: 120; was 80."]);
    expect(texts.join(" ")).not.toMatch(/Corner|pole more,/);
  });
  test("people and papers", () => {
    const to = frozenOf(
      briefOf(forty, {
        crew: people.filter((p) => p.role !== "trainee").map((p) => (p.role === "crew" ? { ...p, role: "competent" } : p)),
        site: { rallyPoint: "the barn door", overheadKv: [null] },
        sheet: { embedmentIn: 36 },
        ticket: { utilities: [{ kind: "gas", marked: false }], validTo: Date.UTC(2026, 6, 1, 12) },
      }),
    );
    expect(told(to)).toEqual([
      "LOOSER LIMIT. Gas: nothing here; was marked.",
      "LOOSER LIMIT. Water: not on the ticket; was nothing here.",
      "Embedment, in: 36.",
      "Rally point: the barn door; was gate 3, by the road.",
      "Overhead lines, kV: not known; was 7.2.",
      "In force to: 1 Jul 2026, 06:00; was 31 Jul 2026, 06:00.",
      "will: competent person, not crew.",
      "tom leaves the job.",
    ]);
  });
});

describe("what an amendment does to the job as it stands", () => {
  test("names what is asked again and where the guide goes on, before anybody agrees", () => {
    const crew = new Crew(briefOf(forty)).goTo("stakes.size");
    const { reopened, goesOnAt } = amendmentEffect(crew.job, tent({ rings: { AB: before.plan.edges[0]!.rings + 1 } }));
    expect(reopened).toContain("marked");
    expect(reopened).toContain("squared");
    expect(reopened).not.toContain("talk.briefed");
    expect(goesOnAt.id).toBe("stakes.size");
  });
  test("what was loaded stays loaded: it is held against the new list", () => {
    const crew = new Crew(briefOf(forty)).goTo("stakes.size");
    expect(amendmentEffect(crew.job, tent({ rings: { AB: before.plan.edges[0]!.rings + 1 } })).reopened).not.toContain("kit.loaded");
  });
});
