import { describe, expect, it } from "vitest";
import { Decimator, toInt16 } from "../../views/voice/own/decimator.ts";

/** Samples of a tone at 48 kHz. */
const tone = (hz: number) => Float32Array.from({ length: 24_000 }, (_, i) => Math.sin((2 * Math.PI * hz * i) / 48_000));
/** How loud what is left of a tone is against the tone, in dB; the filter's first moments apart. */
function leftDb(hz: number): number {
  const out = new Decimator().take(tone(hz)).slice(100);
  return 10 * Math.log10(2 * (out.reduce((sum, x) => sum + x * x, 0) / out.length));
}

// Kaiser, "Nonrecursive digital filter design using the I0-sinh window function" (1974): for 60 dB over 174 taps the filter falls within 1 kHz.
describe("48 kHz taken down to 16 kHz", () => {
  it.each([100, 300, 1000, 3400, 6000, 6900])("%d Hz stay as they are, to a tenth of a dB", (hz) =>
    expect(Math.abs(leftDb(hz))).toBeLessThan(0.1),
  );
  it.each([8100, 9000, 12_000, 16_000, 20_000, 23_000])("%d Hz, which would come back as another tone, are 60 dB down", (hz) =>
    expect(leftDb(hz)).toBeLessThan(-60),
  );
  it("it is the same in pieces of any length", () => {
    const whole = new Decimator().take(tone(440));
    const decimator = new Decimator();
    const pieces: number[] = [];
    for (let at = 0, n = 1; at < 24_000; at += n, n = (n % 700) + 37) pieces.push(...decimator.take(tone(440).subarray(at, at + n)));
    expect(pieces).toEqual([...whole]);
  });
  it("what is louder than can be is as loud as can be", () =>
    expect([...toInt16(Float32Array.of(2, -2, 0.5))]).toEqual([32_767, -32_768, 16_384]));
});
