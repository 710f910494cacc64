import { describe, expect, it } from "vitest";
import type { Did } from "../../machines/install/commands.ts";
import { freeze } from "../../machines/install/freeze.ts";
import type { Gate } from "../../machines/install/gates.ts";
import { allSteps } from "../../machines/install/job.ts";
import type { MissingGate, Refusal, Status, UnmetStatus } from "../../machines/install/refusals.ts";
import { ESCAPES, PHASES } from "../../machines/install/step.ts";
import { keyOf } from "../../machines/install/thing.ts";
import { readBrief } from "../../server/input/brief.ts";
import { calls } from "../../views/text/en/calls.ts";
import { guide } from "../../views/text/en/guide.ts";
import { findingText, limitText, sourceText, valueText } from "../../views/text/en/limits.ts";
import { feetInches, inches } from "../../views/text/en/names.ts";
import { type About, didText, refusalText, statusText } from "../../views/text/en/refusals.ts";
import { phaseName } from "../../views/text/en/roles.ts";
import { pulls, screenedBrief, WINDY } from "../support/anchorages.ts";
import { brief } from "../support/app.ts";
import { briefFor, frozenFor, nothingKnown } from "../support/briefs.ts";
import { OFF_THE_BASELINE, TOO_NEAR, WITH_AN_ANCHOR } from "../support/site-briefs.ts";
import { FORECAST, WEATHER_PLAN, withWeather } from "../support/weather-plan.ts";
import { eighty, forty, hundred, sixty, twenty } from "../tent/tents.ts";

const NONSENSE = /undefined|NaN|null|\[object/;
const jobs = {
  "the demo": readBrief(brief()).frozen,
  "a one-piece 20 by 20, few people, nothing wanted": frozenFor(twenty, {
    use: { occupants: 20, permit: "notRequired", fabricCertificate: "notRequired", walls: false },
  }),
  "a 20 by 20 on unknown soil without a figure": frozenFor(twenty, { site: { soilKnown: false } }),
  "a 40 by 80 on unknown soil with a figure, loads hung": frozenFor(forty, {
    site: { soilKnown: false },
    sheet: { pullTestLbf: 900, stakeLeanDeg: { from: 3, to: 8 } },
    use: { hungLoads: true },
  }),
  "a 60 by 120 with centers first, all of them tied at the end": frozenFor(sixty, {
    sheet: { interiorOrder: "centersFirst", interiorTies: "afterAll", embedmentIn: null },
  }),
  "an 80 by 100": frozenFor(eighty),
  "a 100 by 200 with everything unknown": frozenFor(hundred, {
    site: { soilKnown: false, overheadKv: [null, 115, 1500] },
    use: { occupants: null, permit: "unknown", fabricCertificate: "unknown", walls: false, hungLoads: true },
  }),
  "a 20 by 20 of which neither sheet, ticket nor places are known": freeze(nothingKnown(briefFor(twenty))),
  "a small tent with a weather plan and a forecast over its limit": freeze(
    withWeather({ weatherPlan: WEATHER_PLAN, forecast: { ...FORECAST, clearBy: FORECAST.from } }),
  ),
  "a small tent with a forecast over what it is raised in": freeze(withWeather({ forecast: { ...FORECAST, gustMph: 22 } })),
  "a small tent too near to all that there is": freeze(TOO_NEAR),
  "a small tent near nothing, off its site's baseline": freeze(OFF_THE_BASELINE),
  "a small tent with a private line and an engineer's anchor": freeze(WITH_AN_ANCHOR),
  "a small tent whose anchors are short by pulls": freeze(screenedBrief({ ...WINDY, pulls: pulls(1120, 980, 640), rainSincePulls: false })),
  "a small tent whose anchors are short of an unknown load": freeze(screenedBrief({ pulls: pulls(90, 80, 70), rainSincePulls: false })),
  "a small tent whose anchors rest on earlier pulls": freeze(
    screenedBrief({ ...WINDY, pulls: pulls(2000, 1500, 900), rainSincePulls: false }),
  ),
  "a small tent with bare stakes in sand": freeze(screenedBrief({ ...WINDY, soil: "sandLoose" })),
  "a small tent of whose ground nothing is told": freeze(screenedBrief(WINDY)),
  "a 100 by 200 with more people than the table": frozenFor(hundred, { use: { occupants: 1500 } }),
};

describe.each(Object.entries(jobs))("every call of %s", (_name, { script }) => {
  const steps = allSteps(script);
  const said = [...steps, ...script.conditions.map((condition) => ({ id: condition.gate.id, ...condition }))];
  const gated = said.flatMap((step) => (step.gate ? [{ step, gate: step.gate }] : []));

  it("has words short enough to hear, and a reason", () => {
    for (const step of said) {
      expect(calls[step.wordsKey], step.wordsKey).toBeDefined();
      for (const text of [calls[step.wordsKey]!.say(step.params), calls[step.wordsKey]!.why]) {
        expect(text, step.id).toMatch(/^[A-Z0-9]/);
        expect(text, step.id).not.toMatch(NONSENSE);
        expect(text.length, step.id).toBeLessThan(200);
      }
    }
  });

  it("has for its gate a question, a limit and what to do instead", () => {
    for (const { step, gate } of gated) {
      const { ask, ifNot } = calls[step.wordsKey]!;
      for (const text of [ask?.(step.params) ?? "", ifNot ?? "", limitText(gate), sourceText(gate.source)]) {
        expect(text, step.id).toMatch(/\S/);
        expect(text, step.id).not.toMatch(NONSENSE);
      }
    }
  });

  it("speaks of the paper where one is taken, asks for it where nothing else will do, and of none elsewhere", () => {
    for (const { step, gate } of gated) {
      const { ask, ifNot } = calls[step.wordsKey]!;
      if (gate.check.kind === "paperOnly") expect(ask!(step.params), step.id).toMatch(/paper/);
      else if (gate.paper) expect(ifNot, step.id).toMatch(/paper/);
      else expect(ifNot, step.id).not.toMatch(/\bpaper\b/);
    }
  });

  it("has an id of its own and at most one gate, named like it", () => {
    expect(new Set(steps.map((s) => s.id)).size).toBe(steps.length);
    for (const { id, gate } of steps) if (gate) expect(gate.id).toBe(id);
  });
});

it("no words are left over that no job says", () => {
  const said = new Set(
    Object.values(jobs).flatMap(({ script }) => [...allSteps(script), ...script.conditions].map(({ wordsKey }) => wordsKey)),
  );
  expect(Object.keys(calls).filter((call) => !said.has(call))).toEqual([]);
});

describe("what a trainee reads beside a call", () => {
  const all = Object.entries(calls);
  const shared = (texts: readonly string[]) => texts.filter((text, i) => texts.indexOf(text) !== i);

  it.each(all)("%s tells what goes wrong and how it is done well, in a line or two", (_call, { wrong, well }) => {
    for (const text of [wrong, well]) {
      expect(text).toMatch(/^[A-Z].*[.?]$/);
      expect(text.length).toBeGreaterThanOrEqual(20);
      expect(text.length).toBeLessThanOrEqual(190);
    }
  });

  it.each(all)("%s gives no figure there: figures stand in its limit, with their source", (_call, { wrong, well }) =>
    expect(`${wrong} ${well}`).not.toMatch(/\d/),
  );

  it.each(all)("%s says something else each time: why, what goes wrong, how it is done well, what to do instead", (_call, words) => {
    const texts = [words.why, words.wrong, words.well, ...(words.ifNot === undefined ? [] : [words.ifNot])];
    expect(shared(texts)).toEqual([]);
  });

  it("no two calls go wrong in the same words", () => expect(shared(all.map(([, { wrong }]) => wrong))).toEqual([]));

  it("no two calls are done well in the same words", () => expect(shared(all.map(([, { well }]) => well))).toEqual([]));
});

describe("a seam is called in one short line", () => {
  const lace = (job: keyof typeof jobs, wordsKey: string, seam: string) => {
    const step = jobs[job].script.steps.find((s) => s.wordsKey === wordsKey && s.params.seam === seam)!;
    return calls[wordsKey]!.say(step.params);
  };
  it.each([
    [lace("an 80 by 100", "lace.first", "R-DA"), "Ridge seam DA: center rings together, lace to the quarter ring, 20 ft."],
    [lace("an 80 by 100", "lace.ring", "S1"), "Seam 1, AB half: lace to the quarter ring, 20 ft."],
    [lace("a 100 by 200 with everything unknown", "lace.ring", "S1"), "Seam 1, AB half: lace center to outer quarter ring, 33 ft 4 in."],
    [
      lace("a 40 by 80 on unknown soil with a figure, loads hung", "lace.first", "S1"),
      "Seam 1, AB half: center rings together, lace to the edge.",
    ],
    [
      lace("a 40 by 80 on unknown soil with a figure, loads hung", "lace.out", "S2"),
      "Seam 2, AB half: lace from the center ring to the edge.",
    ],
  ])("%s", (is, wanted) => expect(is).toBe(wanted));
});

describe("a diagonal longer than the tape takes a longer one", () => {
  const squared = calls.squared!;
  it.each([
    [99, "Tape all four sides and both diagonals."],
    [128, "Tape all four sides and both diagonals. Take the two-hundred-foot tape."],
    [224, "Tape all four sides and both diagonals. Take the three-hundred-foot tape."],
  ])("%d ft", (diagonalFt, says) => expect(squared.say({ AC: diagonalFt, BD: diagonalFt })).toBe(says));
});

describe("refusals", () => {
  const missing: Record<UnmetStatus, true> = {
    open: true,
    unknown: true,
    outOfLimit: true,
    noGust: true,
    early: true,
    stale: true,
    recheckDue: true,
    samePerson: true,
    unseen: true,
  };
  const others: { readonly [W in Exclude<Refusal["why"], "gate">]: Extract<Refusal, { why: W }> } = {
    outOfUse: { why: "outOfUse", keys: ["piece.mid-1"], things: [{ thing: { is: "piece", id: "mid-1" }, because: "torn at a ring" }] },
    tooLong: { why: "tooLong", needMin: 60, leftMin: 25, because: "trend" },
    pastHour: { why: "pastHour", clearBy: 0 },
    tooHot: { why: "tooHot", airF: 98, humidity: 60, sun: null, indexF: 124 },
    tooCold: { why: "tooCold", airF: -40, windMph: 20, chillF: -74 },
    noSuchThing: { why: "noSuchThing", thing: { is: "piece", id: "mid-9" }, has: ["top"] },
    notOutOfUse: { why: "notOutOfUse", thing: { is: "kit", item: "perimeterStrap", short: 2 } },
    held: { why: "held", by: "lena" },
    paused: { why: "paused", by: "lena" },
    looserLimit: { why: "looserLimit", paper: "sheet", fields: ["sheet.stakeDiameterIn", "sheet.embedmentIn"] },
    forgets: { why: "forgets", facts: ["sheet", "firstAid"] },
    ownPaper: { why: "ownPaper" },
    ownPhone: { why: "ownPhone" },
    datedAhead: { why: "datedAhead", gate: "squared", dated: "2027-01-01" },
    sameDevice: { why: "sameDevice" },
    noReadBack: { why: "noReadBack" },
    peopleUnder: { why: "peopleUnder" },
    sayWhatBecame: { why: "sayWhatBecame" },
    alreadyHurt: { why: "alreadyHurt", by: "lena" },
    role: { why: "role", is: "trainee", may: ["lead", "competent"] },
    notAskedHere: { why: "notAskedHere", gate: "g" },
    wrongKind: { why: "wrongKind", gate: "g" },
    hardGate: { why: "hardGate", gate: "g" },
    movedOn: { why: "movedOn", revision: 4 },
    notThereYet: { why: "notThereYet", seen: 9, last: 4 },
    noSuchGate: { why: "noSuchGate", gate: "g" },
    unbelievable: { why: "unbelievable", gate: "g", n: 1e9, unit: "ft", bounds: { from: 0, to: 10_000 } },
    nothingBefore: { why: "nothingBefore" },
    notHeld: { why: "notHeld" },
    future: { why: "future" },
    olderReading: { why: "olderReading" },
    inALee: { why: "inALee" },
    noThunderNear: { why: "noThunderNear" },
    noPhoto: { why: "noPhoto", unfit: { is: "none", came: "pdf" } },
    notOnlyFound: { why: "notOnlyFound" },
    siteFull: { why: "siteFull", most: 500 },
    noProposal: { why: "noProposal" },
    sameAsProposer: { why: "sameAsProposer" },
    alreadyStandingDown: { why: "alreadyStandingDown" },
    jobClosed: { why: "jobClosed" },
  };
  const gate = (status: UnmetStatus, more: Partial<MissingGate> = {}): Refusal => ({
    why: "gate",
    gate: "g",
    status,
    asked: "here",
    because: null,
    notBefore: null,
    ...more,
  });
  const gates = (Object.keys(missing) as UnmetStatus[]).map((status) => gate(status));
  const again = (["amendment", "back", "strike", "clearing", "rain", "blow"] as const).map((because) =>
    gate("open", { asked: "again", because }),
  );
  const nothing: About = {
    ask: null,
    ifNot: null,
    limit: null,
    value: null,
    found: null,
    notBefore: null,
    check: null,
    inHand: false,
    wind: null,
    name: (id) => id,
  };
  const all: About = { ...nothing, ask: "How many inches?", ifNot: "Drive it down.", limit: "at most 6 in", value: "8 in" };

  it.each([...gates, ...again, ...Object.values(others), { why: "held", by: null } as const])(
    "%o says why, with all known and with nothing",
    (refusal) => {
      for (const about of [all, nothing]) {
        expect(refusalText(refusal, about)).toMatch(/^[A-Z0-9].*[.?]$/);
        expect(refusalText(refusal, about)).not.toMatch(NONSENSE);
      }
    },
  );

  it("out of its limit: the value, what is wanted, and what to do", () =>
    expect(refusalText(gate("outOfLimit"), all)).toBe("8 in. Need at most 6 in. Drive it down."));

  it("asked again: what made it so", () =>
    expect(refusalText(gate("open", { asked: "again", because: "amendment" }), all)).toBe("Asked again, plan changed. How many inches?"));

  it("lightning: until when", () =>
    expect(refusalText(gate("outOfLimit"), { ...nothing, check: "quiet", notBefore: "15:11" })).toBe(
      "Lightning. Nobody goes on before 15:11. Take shelter; make safe.",
    ));

  it("an old wind with a pole in hand: the pole first", () =>
    expect(refusalText(gate("stale"), { ...all, check: "wind", inHand: true })).toBe("Finish this pole; then the wind again."));

  describe("a thing out of use", () => {
    const lacking = (...things: Extract<Refusal, { why: "outOfUse" }>["things"]) =>
      refusalText({ why: "outOfUse", keys: things.map(({ thing }) => keyOf(thing)), things }, nothing);
    const mid = { thing: { is: "piece", id: "mid-1" }, because: "torn at a ring" } as const;
    const straps = { thing: { is: "kit", item: "perimeterStrap", short: 4 }, because: "left at the yard" } as const;
    it.each([
      [lacking(mid), "Mid 1 is out of use: torn at a ring. Mend or swap it, then say it's back."],
      [lacking(straps), "4 ratchet straps short. Get them, then say they're here."],
      [lacking(straps, mid), "4 ratchet straps short. Get them, then say they're here. And 1 more."],
      [
        lacking({ thing: { is: "piece", id: "end-A" }, because: "torn from the second ring to the eave, and a grommet gone." }, straps),
        "End piece A is out of use: torn from… Mend or swap it, then say it's back. And 1 more.",
      ],
    ])("%s", (text, wanted) => {
      expect(text).toBe(wanted);
      expect(text.split(" ").length).toBeLessThanOrEqual(20);
    });
  });

  it("every reply and every standing has words", () => {
    const did: Record<Did, true> = {
      moved: true,
      wentBack: true,
      held: true,
      paused: true,
      readBack: true,
      dropped: true,
      carriedOn: true,
      tookLead: true,
      hurt: true,
      answered: true,
      seen: true,
      waived: true,
      noted: true,
      photographed: true,
      read: true,
      watched: true,
      proposed: true,
      amended: true,
      discarded: true,
      makingSafe: true,
      goingOn: true,
      standingDown: true,
      outOfUse: true,
      backInUse: true,
      found: true,
      closed: true,
    };
    const statuses: Record<Status, true> = { ...missing, good: true, waived: true };
    for (const d of Object.keys(did) as Did[]) expect(didText(d), d).toMatch(/\S/);
    for (const s of Object.keys(statuses) as Status[]) expect(statusText(s), s).toMatch(/\S/);
    for (const phase of [...PHASES, ...ESCAPES]) expect(phaseName(phase), phase).toMatch(/^[A-Z][a-z]+( [a-z]+)?$/);
  });
});

describe("limits", () => {
  const limit = (unit: "deg" | "in" | "ft" | "mph", from: number | null, to: number | null) =>
    limitText({ check: { kind: "measure", unit, from, to, noneIsGood: false } } as Gate);
  const figures = (unit: "count" | "in", want: Record<string, { from: number | null; to: number | null }>) =>
    limitText({ check: { kind: "figures", unit, names: Object.keys(want), want } } as Partial<Gate> as Gate);
  it.each([
    [limit("deg", 0, 10), "no more than 10° and not toward the tent"],
    [limit("deg", 3, 8), "3° to 8° away from the tent"],
    [limit("deg", -1, 1), "within 1° of plumb"],
    [limit("in", 24, null), "24 in or more"],
    [limit("ft", 0, 75), "at most 75 ft"],
    [limit("in", 0, 6), "at most 6 in"],
    [limit("mph", 1, 30), "at most 30 mph"],
    [figures("count", { AB: { from: 3, to: 3 }, BC: { from: 3, to: 3 } }), "each exactly 3"],
    [
      figures("count", { AB: { from: 11, to: 11 }, BC: { from: 9, to: 9 }, CD: { from: 11, to: 11 } }),
      "AB and CD exactly 11; BC exactly 9",
    ],
    [figures("in", { thinnest: { from: 0.9375, to: null } }), "thinnest 15/16 in or more"],
    [limitText({ check: { kind: "each", names: ["gas", "septic"] } }), "a yes for gas and septic"],
    [limitText({ check: { kind: "wind", belowMph: 20 } }), "a fresh reading, gusts under 20 mph"],
    [limitText({ check: { kind: "quiet" } }), "30 minutes without thunder or lightning"],
    [limitText({ check: { kind: "count", from: 11, to: 11 } } as Gate), "exactly 11"],
    [valueText({ kind: "measure", n: 5.5, unit: "in" }), "5 1/2 in"],
    [valueText({ kind: "unknown" }), "Don't know"],
    [valueText({ kind: "figures", unit: "in", n: { AB: 0.5, BC: 1 } }), "AB 1/2 in, BC 1 in"],
    [valueText({ kind: "each", yes: { electric: true, reclaimedWater: false } }), "electric yes, reclaimed water no"],
  ])("%s", (is, wanted) => expect(is).toBe(wanted));
});

describe("what an answer comes to", () => {
  const off = { name: "AB", n: 12, limit: { from: 11, to: 11 } };
  it.each([
    [{ kind: "figures", unit: "count", missing: [], off: [] }, "That's all of them."],
    [{ kind: "figures", unit: "count", missing: ["CD", "DA"], off: [] }, "Still to give: CD, DA."],
    [{ kind: "figures", unit: "count", missing: ["CD"], off: [off] }, "AB 12: want exactly 11. Still to give: CD."],
    [{ kind: "each", missing: ["gas"], no: ["electric", "water"] }, "Still a no: electric and water. Still to answer: gas."],
  ] as const)("%o reads: %s", (finding, text) => expect(findingText(finding)).toBe(text));
});

it.each([
  [89 + 5.3125 / 12, "89 ft 5 5/16 in"],
  [100, "100 ft"],
  [0, "0 in"],
  [0.5, "6 in"],
])("%d ft reads %s on a tape", (ft, text) => expect(feetInches(ft)).toBe(text));

it("a fraction of an inch is read off in sixteenths, shortened", () =>
  expect([inches(5.5), inches(1.625), inches(0.25), inches(-0.5)]).toEqual(["5 1/2 in", "1 5/8 in", "1/4 in", "-1/2 in"]));

it("the button of an expected paper keeps its number in one piece: no line ends at its hyphen", () =>
  expect(guide.thisOne("RC-80100 rev C")).toBe("This one: RC\u201180100 rev C"));
