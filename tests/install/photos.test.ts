import { describe, expect, it } from "vitest";
import type { Intent } from "../../machines/install/commands.ts";
import { stateDigest } from "../../machines/install/job.ts";
import { ROLES } from "../../machines/install/roles.ts";
import { Crew } from "../support/crew.ts";

const photo = (gate: string | null = null): Intent => ({
  type: "photo",
  gate,
  text: null,
  hash: "ab".repeat(32),
  mime: "image/jpeg",
  bytes: 300_000,
  widthPx: 1600,
  heightPx: 1200,
});
const none: Intent = { type: "unfitPhoto", gate: null, text: null, unfit: { is: "none", came: "pdf" }, bytes: 9 };
/** What a note at the same moment leaves: nothing but time has passed. */
function afterNote(crew: Crew): string {
  const twin = Object.assign(new Crew(), { job: crew.job, at: crew.at, entry: crew.entry });
  twin.say({ type: "note", text: "tea" }, "crew");
  return stateDigest(twin.job);
}

describe("a photo changes nothing but the record", () => {
  const crew = new Crew();
  it.each<[string, () => unknown]>([
    ["while work goes on", () => {}],
    ["on hold", () => crew.say({ type: "hold" })],
    ["with the work waiting", () => [crew.say({ type: "carryOn", became: null }), crew.say({ type: "pause" })]],
    ["while all is stopped", () => [crew.say({ type: "carryOn", became: null }), crew.thunder()]],
    ["once the job is closed", () => crew.say({ type: "standDown", because: "called off" })],
  ])("%s", (_when, come) => {
    come();
    for (const ask of [photo(), photo("sheet.atHand")]) {
      const wanted = afterNote(crew);
      expect(crew.say(ask, "crew", { seen: 0 })).toEqual({ did: "photographed" });
      expect(stateDigest(crew.job)).toBe(wanted);
    }
    const wanted = afterNote(crew);
    expect(crew.say(none, "crew", { seen: 0 })).toEqual({ refused: [{ why: "noPhoto", unfit: { is: "none", came: "pdf" } }] });
    expect(stateDigest(crew.job)).toBe(wanted);
  });
});

it("everybody but a trainee takes one", () => {
  const crew = new Crew();
  const turnedAway = (ask: Intent) =>
    ROLES.filter((role) => {
      const outcome = crew.say(ask, role);
      return "refused" in outcome && outcome.refused.some(({ why }) => why === "role");
    });
  expect([turnedAway(photo()), turnedAway(none)]).toEqual([["trainee"], ["trainee"]]);
});

it("of a gate that there is none it is refused by name", () => {
  for (const gate of ["squared.twice", "__proto__", "constructor"])
    expect(new Crew().say(photo(gate))).toEqual({ refused: [{ why: "noSuchGate", gate }] });
});
