import type { GuideState } from "../../views/pages/guide/state.ts";
import { brief, testApp } from "./app.ts";
import { drive, type Say } from "./crew-lead.ts";

/** What a day brings besides answers: each kind of command at least once, in the middle of the anchors. */
const ODD: readonly object[] = [
  { type: "hold" },
  { type: "next" },
  { type: "carryOn" },
  { alternatives: ["hold that rope"] },
  { alternatives: ["carry on"] },
  { alternatives: ["note: rain coming"] },
  { type: "back" },
  { heard: "hold" },
  { heard: "carry on" },
  { type: "reading", kind: "wind", mph: 6, gustMph: 9 },
  { alternatives: ["wind 7 gusting 10"], talk: true },
  { alternatives: ["correct"], talk: true },
  { alternatives: ["albatross wind 8 gusting 12"] },
  { alternatives: ["wrong"], talk: true },
  { alternatives: ["correct"], talk: true },
  { type: "outOfUse", thing: { is: "kit", item: "perimeterStrap", short: 2 }, because: "left at the yard" },
  { type: "outOfUse", thing: { is: "piece", id: "mid-9" }, because: "torn" },
  { type: "backInUse", thing: { is: "kit", item: "perimeterStrap", short: 2 }, because: "two came" },
  { type: "makeSafe", because: "a ring tore" },
];

const lengths = (ft: Record<string, number>) => ({ type: "answer", gate: "squared", value: { kind: "lengths", ft } });
/** At the corner marks: spoken, pressed, misread, put right, and measured afresh. */
const SQUARING: readonly object[] = [
  { alternatives: ["A to B 20 feet"], talk: true },
  { alternatives: ["correct"], talk: true },
  lengths({ BC: 20, CD: 20.5, DA: 20 }),
  { type: "next" },
  lengths({ AC: 28.284271 }),
  lengths({ BD: 28.284271 }),
  { type: "next" },
  { type: "answer", gate: "squared", value: { kind: "unknown" } },
  lengths({ AX: 20 }),
];

/** A hand is hurt while corners go up. */
const HURT: readonly (readonly [string, object])[] = [
  ["p6", { alternatives: ["somebody's hurt"] }],
  ["p4", { type: "hurt", words: "his hand is bleeding" }],
  ["p1", { type: "next" }],
  ["p1", { type: "carryOn" }],
  ["p1", { type: "carryOn", became: "bandaged, with the medics" }],
];
/** A squall with people under the center pole: nothing new, the pole in hand first. */
const SQUALL: readonly (readonly [string, object])[] = [
  ["p6", { type: "reading", kind: "thunder" }],
  ["p4", { alternatives: ["wind 45 gusting 60"] }],
  ["p1", { type: "next" }],
  ["p1", { type: "back" }],
  ["p1", { type: "standDown", because: "squall" }],
];
/** A blow and rain over the standing tent. */
const BLOW: readonly (readonly [string, object])[] = [
  ["p7", { type: "reading", kind: "warning" }],
  ["p4", { type: "reading", kind: "wind", mph: 33, gustMph: 41 }],
  ["p5", { type: "reading", kind: "rain" }],
  ["p1", { type: "next" }],
  ["p1", { type: "makeSafe", because: "41 mph" }],
];

/** Another crew strikes it, with the same competent person. */
const STRIKERS = [
  { name: "Tobias", role: "lead" },
  { name: "Maren", role: "competent" },
  { name: "Ray", role: "crew" },
  { name: "Sol", role: "crew" },
  { name: "Wes", role: "crew" },
  { name: "Lasse", role: "manager" },
];

/** A whole job, driven from its opening to its close under the present version of the procedure, as lines of text. */
export async function recordGolden(): Promise<string> {
  const { app, post, journal, clock } = testApp();
  const small = brief();
  Object.assign(small.tent, { widthFt: 20, lengthFt: 20, midsFt: undefined, onePiece: true, splitEnds: false });
  Object.assign(small.tent, { quarterRings: 0, centerPoleFt: 13 });
  const { job } = (await (await post("/jobs", { key: "golden-0001", brief: small })).json()) as { job: string };
  const read = async () => (await (await app.request(`/jobs/${job}.json`, { headers: { cookie: "device=office" } })).json()) as GuideState;
  const say: Say = async (body) => {
    const told = await post(`/jobs/${job}/say`, body);
    return { status: told.status, body: (await told.json()) as Awaited<ReturnType<Say>>["body"] };
  };
  const by = async (as: string, key: string, ask: object) => {
    const { revision, readBack } = await read();
    return say({ as, key, seen: revision, ...("alternatives" in ask ? { readBack: readBack?.entry ?? null } : {}), ...ask });
  };
  await drive(read, say, (s) => s.phase === "anchorsSet");
  for (const [i, ask] of ODD.entries()) await by("p1", `golden-odd-${i}`, ask);
  await drive(read, say, (s) => !s.makingSafe);
  await drive(read, say, (s) => s.step === "squared");
  for (const [i, ask] of SQUARING.entries()) await by("p1", `golden-squared-${i}`, ask);
  const moved = { ...small, site: { ...small.site, rallyPoint: "the barn door" } };
  const proposed = await by("p1", "golden-amend", { type: "amend", because: "muster moved", brief: moved });
  await by("p3", "golden-agree", { type: "agree", target: proposed.body.entry });
  await drive(read, say, (s) => s.step === "marked");
  const ringed = { ...moved, tent: { ...moved.tent, rings: { AB: 4 } } };
  const counted = await by("p1", "golden-rings", { type: "amend", because: "the cloth has four rings along AB", brief: ringed });
  await by("p3", "golden-ringed", { type: "agree", target: counted.body.entry });
  const story = async (step: string, odd: readonly (readonly [as: string, ask: object])[]) => {
    await drive(read, say, (s) => s.step === step);
    for (const [i, [as, ask]] of odd.entries()) await by(as, `golden-${step}-${i}`, ask);
  };
  await story("raise.B", HURT);
  await story("lift.center.C1", SQUALL);
  clock.pass(31 * 60);
  await story("tied.center.C1", [["p1", { type: "next" }]]);
  await story("out.center.C1", [["p1", { type: "next" }]]);
  await drive(read, say, (s) => s.step === "tension.corners");
  const joined = { ...ringed, crew: [...ringed.crew, { name: "Vera", role: "crew" }] };
  const hand = await by("p1", "golden-hand", { type: "amend", because: "Vera came", brief: joined });
  await by("p3", "golden-hand-agreed", { type: "agree", target: hand.body.entry });
  await story("watch", BLOW);
  await drive(read, say, (s) => s.step === "watch.end");
  const others = { ...joined, crew: STRIKERS };
  const strikers = await by("p1", "golden-crew", { type: "amend", because: "Tobias's crew strikes it", brief: others });
  await by("p3", "golden-crew-agreed", { type: "agree", target: strikers.body.entry });
  await drive(read, say, (s) => s.closed);
  const lines = (await journal.read(job)).map(({ no, hash, bytes }) =>
    JSON.stringify({ no, hash, bytes: new TextDecoder().decode(bytes) }),
  );
  return `${lines.join("\n")}\n`;
}
