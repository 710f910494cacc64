import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it, vi } from "vitest";
import { freeze } from "../../machines/install/freeze.ts";
import type { DEFAULTS as Defaults } from "../../machines/install/limits.ts";
import { readBrief } from "../../server/input/brief.ts";
import { briefFromForm } from "../../server/input/brief-from-form.ts";
import { briefToForm } from "../../server/input/brief-to-form.ts";
import { fields } from "../../views/text/en/brief.ts";
import { en } from "../../views/text/en/en.ts";
import { brief } from "../support/briefs.ts";

/** Each default a little other than it is. Read by `limitsFor` in the same object, so that nothing keeps the old ones. */
vi.mock("../../machines/install/limits.ts", async (original) => {
  const real = await original<{ DEFAULTS: Record<string, { is: unknown }> }>();
  const changed: Partial<Record<keyof typeof Defaults, unknown>> = {
    raiseGustMph: 17,
    stopGustMph: 23,
    insideGustMph: 28,
    squareInPer50Ft: 0.75,
    stakeLeanDeg: { from: 1, to: 9 },
    maxShowingIn: 5,
    sidePoleLeanDeg: 0.5,
    toleranceIn: 27,
  };
  for (const [name, is] of Object.entries(changed)) real.DEFAULTS[name]!.is = is;
  return real;
});

const sheet = { ...brief().sheet, embedmentIn: null, raiseGustMph: null, stopGustMph: null };
const { toleranceIn: _, ...ticket } = brief().ticket;
const { frozen, names } = readBrief({ ...brief(), sheet, ticket });
const gateOf = (id: string) => frozen.script.steps.find((s) => s.gate?.id === id)!.gate!.check;

describe("a default that is changed in its one place", () => {
  it("is what the form's hints say", () => {
    const hints = [
      "raiseGustMph",
      "stopGustMph",
      "insideGustMph",
      "squareInPer50Ft",
      "stakeLeanDeg.from",
      "stakeLeanDeg.to",
      "embedmentIn",
      "sidePoleLeanDeg",
    ];
    expect(hints.map((name) => fields[`sheet.${name}`]!.hint)).toEqual([
      "empty: 17; at most 25",
      "empty: 23; at most 30",
      "empty: 28; at most 38",
      "empty: 0.75",
      "empty: 1",
      "empty: 9",
      "empty: at most 5 in showing",
      "empty: 0.5",
    ]);
    expect(fields["ticket.toleranceIn"]!.hint).toBe("local law's figure, 18 at least; empty: 27");
  });
  it("is what an empty field of a brief or of its form comes to", () => {
    expect(frozen.brief.ticket?.toleranceIn).toBe(27);
    const form = { ...briefToForm(frozen.brief, names, en), "ticket.toleranceIn": "", "sheet.stakeLeanDeg.from": "4" };
    const read = readBrief(briefFromForm(form)).frozen.brief;
    expect([read.ticket?.toleranceIn, read.sheet?.stakeLeanDeg]).toEqual([27, { from: 4, to: 9 }]);
    expect(() => readBrief({ ...brief(), sheet: { ...sheet, raiseGustMph: 24 } })).toThrow();
  });
  it("is what the calls ask", () => {
    expect(frozen.limits).toEqual(freeze(frozen.brief).limits);
    expect([frozen.limits.raiseGustMph.is, frozen.limits.stopGustMph.is]).toEqual([17, 23]);
    expect(gateOf("squared")).toMatchObject({ inPer50Ft: 0.75 });
    expect(gateOf("lean.outward")).toMatchObject({ want: { AB: { from: 1, to: 9 } } });
    expect(gateOf("drive.AB")).toMatchObject({ to: 5 });
    expect(gateOf("tied.center.C1")).toMatchObject({ to: 5 });
    // Half a degree over a pole of 8 ft, to the next sixteenth of an inch.
    expect(gateOf("plumb")).toMatchObject({ want: { AB: { from: 0, to: 13 / 16 } } });
    expect(gateOf("nearest.gas")).toMatchObject({ from: 27 });
    expect(gateOf("plan.evacuate")).toMatchObject({ to: 28 });
    const winds = frozen.script.conditions.flatMap(({ gate: { id, check } }) => (check.kind === "wind" ? [[id, check.belowMph]] : []));
    expect(winds).toEqual([
      ["wind.cloth", 17],
      ["wind.lift", 17],
      ["wind.lower", 23],
      ["wind.use", 23],
    ]);
  });
});

describe("a list stands in one place", () => {
  const sources = ["machines", "server", "views"].flatMap((root) =>
    readdirSync(root, { recursive: true, encoding: "utf8" })
      .filter((file) => /\.tsx?$/.test(file))
      .map((file) => join(root, file)),
  );
  it.each([
    ["roles", /"crew",\s*"trainee"/, "machines/install/roles.ts"],
    ["utilities", /"communication",\s*"water"/, "machines/figures/utilities.ts"],
    ["orders of the inside poles", /"quartersFirst",\s*"centersFirst"/, "machines/install/brief-choices.ts"],
    ["what is known of a paper", /"unknown",\s*"required"|"notRequired",\s*"unknown"/, "machines/install/brief-choices.ts"],
  ])("of %s", (_what, list, file) => {
    expect(sources.filter((source) => list.test(readFileSync(source, "utf8")))).toEqual([file]);
  });
});
