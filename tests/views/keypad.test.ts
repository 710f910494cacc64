import { describe, expect, it } from "vitest";
import { readNumber } from "../../machines/speech/en/numbers.ts";
import { typed } from "../../views/parts/keypad.client.ts";

const keyed = (keys: string) => keys.split(" ").reduce(typed, "");

describe("our own keys", () => {
  it.each([
    ["1 2 8 ft 4 ½", "128 ft 4 1/2 in"],
    ["1 2 8 ft 4 ½ ¼", "128 ft 4 3/4 in"],
    ["5 ½ ¼ ⅛", "5 7/8"],
    ["½ ½", "1/2"],
    ["1 2 8 ft 4 ½ ⌫", "128 ft 4"],
    ["1 2 8 ft ⌫", "128"],
    ["1 2 ⌫", "1"],
    ["5 - -", "5"],
    ["ft", ""],
  ])("%s writes %s", (keys, text) => expect(keyed(keys).trim()).toBe(text));

  it("every eighth of an inch is reached, and read as what it is", () => {
    const eighths = ["⅛", "¼", "¼ ⅛", "½", "½ ⅛", "½ ¼", "½ ¼ ⅛"].map((keys) => readNumber(keyed(`6 ft 2 ${keys}`))!.n);
    expect(eighths).toEqual([1, 2, 3, 4, 5, 6, 7].map((n) => expect.closeTo(6 + (2 + n / 8) / 12, 9)));
  });
});
