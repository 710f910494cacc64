import { describe, expect, it } from "vitest";
import { type Activity, FRAME_MS, Loudness, VoiceActivity } from "../../views/voice/own/voice-activity.ts";

const QUIET_DB = -60;
const SPEECH_DB = -30;
/** A microphone that has been open for a second in a quiet place. */
function opened(): VoiceActivity {
  const activity = new VoiceActivity();
  goOn(activity, 1000, 0);
  return activity;
}
/** What so many ms come to, one after the other, without what goes on as it was. */
function goOn(activity: VoiceActivity, ms: number, speech: number, level = speech > 0.5 ? SPEECH_DB : QUIET_DB): Activity[] {
  return Array.from({ length: ms / FRAME_MS }, () => activity.take(level, speech)).filter((is) => is !== "quiet" && is !== "goesOn");
}

describe("speech is told from quiet", () => {
  it("begins with a word, and ends a third of a second after it", () => {
    const activity = opened();
    expect(goOn(activity, 600, 0.9)).toEqual(["began"]);
    expect(goOn(activity, 320, 0.1)).toEqual(["pauses"]);
    expect(goOn(activity, 60, 0.1)).toEqual(["ended"]);
  });
  it("goes on over the gap between two words, told of once where it may be the end", () => {
    const activity = opened();
    goOn(activity, 400, 0.9);
    expect([...goOn(activity, 140, 0.1), ...goOn(activity, 400, 0.9)]).toEqual([]);
    expect(activity.isPausing).toBe(false);
    expect(goOn(activity, 240, 0.1)).toEqual(["pauses"]);
    expect(activity.isPausing).toBe(true);
    expect(goOn(activity, 400, 0.9)).toEqual([]);
    expect(activity.isPausing).toBe(false);
  });
  it("does not pause while the end of a word hisses over the noise", () => {
    const activity = opened();
    goOn(activity, 400, 0.9);
    expect(goOn(activity, 200, 0.1, -45)).toEqual([]);
    expect(goOn(activity, 160, 0.1)).toEqual(["ended"]);
  });
  it("is no click: a loud moment begins nothing", () => expect(goOn(opened(), 40, 0.9, -3)).toEqual([]));
  it("is none while the microphone has just been opened", () => expect(goOn(new VoiceActivity(), 480, 0.9)).toEqual([]));
  it("that does not end in six seconds is no answer", () => expect(goOn(opened(), 6200, 0.9).slice(0, 2)).toEqual(["began", "tooLong"]));
  it("is cut where the button is let go, and only where there was some", () => {
    const activity = opened();
    expect(activity.cut()).toBe(false);
    goOn(activity, 400, 0.9);
    expect(activity.cut()).toBe(true);
    expect(activity.cut()).toBe(false);
  });
  it("is so much over the noise of the place as its louder half is", () => {
    const activity = opened();
    goOn(activity, 600, 0.9, -35);
    goOn(activity, 400, 0, QUIET_DB);
    expect(activity.marginDb).toBeCloseTo(25, 0);
  });
  it("the noise of the place is followed as it gets up", () => {
    const activity = opened();
    goOn(activity, 4000, 0, -40);
    expect(activity.floorDb).toBe(-40);
  });
});

describe("how loud sound is", () => {
  const tone = (hz: number, peak: number) =>
    Float32Array.from({ length: 48_000 }, (_, i) => peak * Math.sin((2 * Math.PI * hz * i) / 48_000));
  // The mean square of a sine is half the square of its peak: 3 dB under it.
  it("a tone of full scale is 3 dB under the loudest there is", () => expect(new Loudness().take(tone(3000, 1))).toBeCloseTo(-3, 0));
  it("half as loud is 6 dB less", () => expect(new Loudness().take(tone(3000, 0.5))).toBeCloseTo(-9, 0));
  it("the rumble of wind counts for little: at 30 Hz 20 dB less", () => expect(new Loudness().take(tone(30, 1))).toBeLessThan(-22));
  it("a microphone that gives nothing is as quiet as can be told", () => expect(new Loudness().take(new Float32Array(960))).toBe(-96));
});
