import { describe, expect, it } from "vitest";
import { interpret, type Screen } from "../../machines/conversation/interpret.ts";
import { missingNow } from "../../machines/install/job.ts";
import { english } from "../../machines/speech/en/english.ts";
import { HOUR, START } from "../proof/fixtures.ts";
import { Crew } from "../support/crew.ts";

const screen: Screen = { device: "phone-1", wakeWord: "albatross", language: english };
const heard = (crew: Crew, words: string, talk = true) =>
  interpret(crew.job, screen, { by: "voice", alternatives: [words], talk, readBack: null }, crew.at);
const typed = (crew: Crew, words: string) => interpret(crew.job, screen, { by: "typing", words }, crew.at);

describe("what was said comes to a command, a question, or nothing", () => {
  const crew = new Crew().goTo("talk.headcount");

  it("an answer that is spoken is read back before it counts", () =>
    expect(heard(crew, "three")).toMatchObject({
      is: "command",
      intent: { type: "readBack", intent: { type: "answer", gate: "talk.headcount", value: { kind: "count", n: 3 } } },
      spoken: "talk",
      heard: "three",
    }));
  it("the same answer typed counts at once", () =>
    expect(typed(crew, "three")).toMatchObject({ is: "command", intent: { type: "answer", value: { n: 3 } }, spoken: null }));
  it("a press is what it says it is, and was not heard", () =>
    expect(interpret(crew.job, screen, { by: "press", intent: { type: "next" } }, crew.at)).toEqual({
      is: "command",
      intent: { type: "next" },
      spoken: null,
      heard: null,
    }));
  it("a question is handed on as what it asks", () =>
    expect(heard(crew, "how many stakes at the corners", false)).toMatchObject({
      is: "question",
      question: { asks: "howMany", what: "stakes", kind: "corner", edge: null },
    }));
  it("a number of another kind names both units, and is no command", () =>
    expect(typed(crew, "three feet")).toMatchObject({ is: "notUnderstood", because: { why: "wrongUnit", gave: "ft", wants: "count" } }));
  it("words that mean nothing here come back as they were said", () =>
    expect(typed(crew, "gimme the mallet")).toEqual({
      is: "notUnderstood",
      because: { why: "noMeaning", words: "gimme the mallet" },
      heard: "gimme the mallet",
    }));
  it("chatter into an open microphone is left alone", () =>
    expect(heard(crew, "lovely morning for it", false)).toMatchObject({ is: "leftAlone", because: "chatter" }));
  it("an answer into an open microphone wants the wake word", () =>
    expect(heard(crew, "three", false)).toMatchObject({ is: "leftAlone", because: "wakeWord" }));
  it("thunder is a reading of this moment", () =>
    expect(heard(crew, "thunder", false)).toMatchObject({
      is: "command",
      intent: { type: "reading", reading: { kind: "thunder", takenAt: crew.at } },
    }));
  it("a wind of five minutes ago is a reading of then, and where it was taken is not made up", () =>
    expect(typed(crew, "wind 8 gusting 12, five minutes ago")).toMatchObject({
      intent: { type: "reading", reading: { kind: "wind", mph: 8, gustMph: 12, fromDeg: null, takenAt: crew.at - 300_000, place: null } },
    }));
  it("where it was read is kept with it", () =>
    expect(typed(crew, "wind ten gusting fifteen in a lee")).toMatchObject({
      intent: { type: "reading", reading: { kind: "wind", mph: 10, gustMph: 15, exposure: "lee" } },
    }));
  it("where it blows from is kept with it", () =>
    expect(typed(crew, "ten gusting fifteen out of the southwest")).toMatchObject({
      intent: { type: "reading", reading: { kind: "wind", mph: 10, gustMph: 15, fromDeg: 225 } },
    }));
  it("a warning and rain are readings of this moment too", () => {
    const reading = (kind: string) => ({ spoken: "open", intent: { type: "reading", reading: { kind, takenAt: crew.at } } });
    expect(heard(crew, "there's a tornado warning", false)).toMatchObject(reading("warning"));
    expect(heard(crew, "it's raining", false)).toMatchObject(reading("rain"));
  });
  it("everybody out makes safe, because of these words", () =>
    expect(heard(crew, "Everybody out!", false)).toMatchObject({
      is: "command",
      intent: { type: "makeSafe", because: "Everybody out" },
      spoken: "open",
    }));
  it("somebody hurt is told in the words it was told in", () =>
    expect(heard(crew, "somebody's hurt by the truck", false)).toMatchObject({
      is: "command",
      intent: { type: "hurt", words: "somebody's hurt by the truck" },
    }));
  it("a wind at the job's own stop limit is a reading at once, and one below is read back", () => {
    const { stopGustMph } = crew.job.snapshot.context.limits;
    expect(heard(crew, `ten gusting ${stopGustMph}`, false)).toMatchObject({ intent: { type: "reading", reading: { kind: "wind" } } });
    expect(heard(crew, `ten gusting ${stopGustMph - 1}`, false)).toMatchObject({ is: "leftAlone", because: "wakeWord" });
    expect(heard(crew, `ten gusting ${stopGustMph - 1}`)).toMatchObject({ intent: { type: "readBack" } });
  });
  it("a job that is closed is still held, and still asked about", () => {
    const closed = new Crew();
    closed.say({ type: "standDown", because: "called off" });
    expect(closed.call).toBe("closed");
    expect(heard(closed, "hold", false)).toMatchObject({ is: "command", intent: { type: "hold" } });
    expect(heard(closed, "why", false)).toMatchObject({ is: "question" });
  });
});

describe("what is asked where a job stands", () => {
  const asked = (crew: Crew) => missingNow(crew.job, crew.at)?.gate;
  /** Answers what is asked until it is this, or the job moves on. */
  const until = (crew: Crew, gate: string) => {
    for (const here = crew.call; asked(crew) !== gate; ) {
      if (crew.call !== here || asked(crew) === undefined) throw new Error(`${gate} was not asked at ${here}`);
      if (crew.gate(asked(crew)!).check.kind === "wind") crew.gust(8);
      else crew.answer("good");
    }
    return crew;
  };
  it("is answered, though it is a condition of the next call and not the gate of this one", () => {
    const crew = until(new Crew().goTo("sides.laid"), "hats");
    expect(crew.call).toBe("sides.laid");
    expect(heard(crew, "hats on")).toMatchObject({
      intent: { type: "readBack", intent: { type: "answer", gate: "hats", value: { kind: "yesNo", yes: true } } },
    });
  });
  it("if the words are no answer to it, they may answer the call's own gate again", () => {
    const crew = until(new Crew().goTo("sides.laid"), "hats");
    expect(heard(crew, "eight poles")).toMatchObject({
      intent: { type: "readBack", intent: { type: "answer", gate: "sides.laid", value: { kind: "count", n: 8 } } },
    });
  });
  it("a bare number is a wind where the wind is asked", () => {
    const crew = new Crew().goTo("sides.laid");
    crew.at += HOUR;
    until(crew, "wind.lift");
    expect(typed(crew, "seven")).toMatchObject({ intent: { type: "reading", reading: { kind: "wind", mph: 7, gustMph: null } } });
  });
});

describe("to what was read back", () => {
  const readBack = () => {
    const crew = new Crew().goTo("talk.headcount");
    const said = heard(crew, "three");
    if (said.is !== "command") throw new Error("not taken");
    crew.say(said.intent);
    return crew;
  };
  /** The screen of the one device that has something waiting. */
  const here = (crew: Crew): Screen => ({ ...screen, device: Object.keys(crew.job.readBacks)[0]! });
  const on = (crew: Crew, words: string, shown: number | null) =>
    interpret(crew.job, here(crew), { by: "voice", alternatives: [words], talk: true, readBack: shown }, crew.at);

  it.each(["yes, three", "yeah three", "right, three", "that's correct, three of us"])(
    "%s, where three was read back, is correct",
    (words) => {
      const crew = readBack();
      expect(on(crew, words, crew.entry - 1)).toMatchObject({ is: "command", intent: { type: "correct", target: crew.entry - 1 } });
    },
  );
  it.each(["yes, four", "yeah, thirteen", "right, three or four"])("%s, where three was read back, is said again", (words) => {
    const crew = readBack();
    expect(on(crew, words, crew.entry - 1)).toMatchObject({ is: "notUnderstood" });
  });
  it("correct means the one that the screen showed when it was said", () => {
    const crew = readBack();
    const entry = crew.entry - 1;
    expect(on(crew, "correct", entry)).toMatchObject({ is: "command", intent: { type: "correct", target: entry } });
    expect(on(crew, "correct", null)).toMatchObject({ intent: { type: "correct", target: 0 } });
  });
  it("yes is no answer of its own", () =>
    expect(on(readBack(), "yes", null)).toMatchObject({ is: "notUnderstood", because: { why: "sayCorrect" } }));
  it("after its time is over, yes is an answer to the call again", () => {
    const crew = readBack();
    expect(crew.at).toBeGreaterThan(START);
    const later = interpret(crew.job, here(crew), { by: "voice", alternatives: ["yes"], talk: true, readBack: null }, crew.at + 60_000);
    expect(later).toMatchObject({ is: "notUnderstood", because: { why: "noMeaning" } });
  });
});
