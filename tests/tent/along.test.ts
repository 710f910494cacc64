import { describe, expect, it } from "vitest";
import { alongTent } from "../../machines/tent/along.ts";
import { en } from "../../views/text/en/en.ts";
import { eighty, forty, hundred, planOf, twenty } from "./tents.ts";

describe("where a line of poles stands along the tent, in words", () => {
  it.each([
    ["of two centers the near one", eighty, "C1", "Nearest the D–A end."],
    ["of two centers the far one", eighty, "C2", "Nearest the B–C end."],
    ["of three the middle one", forty, "C2", "The middle one."],
    ["of six the fourth", hundred, "C4", "Third from the B–C end."],
    ["quarters at the near end", eighty, "Q1 Q2 Q3", "The row nearest the D–A end."],
    ["the next ones", eighty, "Q4 Q5", "Second row from the D–A end."],
    ["quarters at the far end", eighty, "Q8 Q9 Q10", "The row nearest the B–C end."],
  ] as const)("%s", (_what, tent, ids, words) => {
    const along = alongTent(planOf(tent), ids.split(" "));
    expect(along && en.picture.along(along)).toBe(words);
  });

  it("nothing of the only one, and of poles that are no line", () => {
    expect(alongTent(planOf(twenty), ["C1"])).toBeNull();
    expect(alongTent(planOf(eighty), ["Q1", "Q4"])).toBeNull();
  });

  it("every line of a tent is told apart from every other of its kind", () => {
    for (const tent of [eighty, hundred, forty]) {
      const plan = planOf(tent);
      const lines = plan.rows.flatMap(({ quarters, centers }) => [
        ...(quarters.length > 0 ? [quarters] : []),
        ...centers.map((id) => [id]),
      ]);
      const told = lines.map((line) => en.picture.along(alongTent(plan, line)!));
      expect(new Set(told).size).toBe(told.length);
    }
  });
});
