import { describe, expect, it } from "vitest";
import { interpret, type Screen } from "../../machines/conversation/interpret.ts";
import { english } from "../../machines/speech/en/english.ts";
import { START } from "../proof/fixtures.ts";
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
      intent: { type: "reading", reading: { kind: "wind", mph: 8, gustMph: 12, takenAt: crew.at - 300_000, place: null } },
    }));
  it("a job that is closed is still held, and still asked about", () => {
    const closed = new Crew();
    closed.say({ type: "standDown", because: "called off" });
    expect(closed.call).toBe("closed");
    expect(heard(closed, "hold", false)).toMatchObject({ is: "command", intent: { type: "hold" } });
    expect(heard(closed, "why", false)).toMatchObject({ is: "question" });
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
