import { describe, expect, it } from "vitest";
import { missingNow, questionAt } from "../../machines/install/job.ts";
import { peopleUnder } from "../../machines/install/missing.ts";
import { weatherAt } from "../../machines/install/weather.ts";
import { signsAt } from "../../machines/rehearsal/signs.ts";
import { storyOf } from "../../machines/rehearsal/story.ts";
import { EXAMPLES } from "../../machines/tent/examples.ts";
import { en } from "../../views/text/en/en.ts";
import { doesRight, play, practiceOf, type Said } from "./play.ts";

const TENT = EXAMPLES.find(({ id }) => id === "example-60x120-split")!.spec;
const HURT_IN_SQUALL = 4;
const practice = (seed: number) => practiceOf(TENT, { seed, trouble: "several" });
const playedRight = (seed: number) => play(practice(seed), doesRight).said;
const seedWith = (is: string): number => {
  for (let seed = 1; seed < 100; seed++) if (storyOf(practice(seed)).some((scene) => scene.is === is)) return seed;
  throw new Error(`no day has ${is}`);
};
const byPlayer = ({ verdict }: Said) => verdict !== null;

describe("what is right", () => {
  it("never leaves people under in a wind that stops all, hold or no hold", () => {
    const waits = playedRight(HURT_IN_SQUALL).filter((said) => byPlayer(said) && said.command.type === "note");
    const left = waits.filter(({ before: { job }, command: { at } }) => {
      const { context, value } = job.snapshot;
      const onWayOut = JSON.stringify(value).includes("makingSafe");
      return !onWayOut && weatherAt(context, at) === "stop" && peopleUnder(job.frozen.script, context);
    });
    expect(left.map(({ before }) => JSON.stringify(before.job.snapshot.value))).toEqual([]);
  });
  it.each(["noHat", "markGone"])("can be answered where it is asked on the day with %s", (is) => {
    const answers = playedRight(seedWith(is)).filter((said) => byPlayer(said) && said.command.type === "answer");
    const unasked = answers.filter(({ before: { job }, command }) => {
      const missing = missingNow(job, command.at);
      const asked = [questionAt(job, command.at)?.gate.id, missing?.why === "gate" ? missing.gate : null];
      return command.type === "answer" && !asked.includes(command.gate);
    });
    expect(unasked.map(({ command }) => command)).toEqual([]);
  });
});

describe("what is to be seen", () => {
  it("tells of a breeze as something new until somebody read it", () => {
    const said = playedRight(seedWith("breeze")).filter(byPlayer);
    const signs = said.flatMap(({ before, command: { at } }) => signsAt(before, at).filter(({ scene }) => scene.is === "breeze"));
    expect(signs[0]?.is).toBe("new");
  });
  it("tells a truckload as the list that the call shows, and fewer things one by one", () => {
    const counted = (names: string[]) => en.rehearsal.look({ kind: "counts", n: Object.fromEntries(names.map((name) => [name, 2])) });
    expect(counted(["horn", "level", "ladder", "broom", "shovel", "caliper", "wallSet"])).toBe("You look: everything on the list.");
    expect(counted(["stakes", "plates"])).toBe("You look: 2 stakes, 2 plates.");
  });
  it("calls a hold for something that can be at that work", () => {
    const held = (work: string) =>
      [0, 1, 2, 3].map((cause) =>
        en.rehearsal.sign(
          {
            is: "on",
            scene: { id: "h", is: "holdCalled", at: "x", params: { by: "p4", work, cause }, brings: { kind: "hold", by: "p4", forS: 60 } },
          },
          () => "Birch",
        ),
      );
    for (const work of ["driving", "openCloth"]) expect(held(work).join(" ")).not.toMatch(/pole|ring|walked in under/);
  });
});
