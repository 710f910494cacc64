import { describe, expect, it } from "vitest";
import { RecordList } from "../../server/record-list.ts";
import { chainOf, lineAfter } from "../support/entries.ts";

const chain = chainOf("job-1", 5);
const [first, second, third] = [chain[0]!, chain[1]!, chain[2]!];

describe("a record that grows", () => {
  it("stays as long as it is when another entry comes after it", () => {
    const short = new RecordList([first]);
    const long = short.with(second).with(third);
    expect([[...short], short.length, short.at(-1), short.at(1)]).toEqual([[first], 1, first, undefined]);
    expect([[...long], long.length, long.at(-1), long.at(1)]).toEqual([[first, second, third], 3, third, second]);
  });
  it("goes two ways where two entries come after the same one", () => {
    const before = new RecordList([first]);
    const one = before.with(second);
    const other = before.with(lineAfter(first, "another"));
    expect([one.at(-1), other.at(-1)?.entry.kind === "command" && other.length]).toEqual([second, 2]);
    expect(other.at(1)).not.toEqual(second);
  });
  it.each([
    [[], 5],
    [[-2], 2],
    [[-9], 5],
    [[1, 3], 2],
    [[3, 99], 2],
    [[0, -1], 4],
  ])("is sliced as an array is: %j", (range, length) => {
    const list = new RecordList([...chain, lineAfter(chain.at(-1)!)], 5);
    expect(list.slice(...range)).toEqual(chain.slice(...range));
    expect(list.slice(...range)).toHaveLength(length);
  });
});
