import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { csv } from "../../views/parts/csv.ts";
import { openedJob } from "../support/job.ts";
import { readCsv } from "../support/read-csv.ts";

describe("comma-separated values (RFC 4180)", () => {
  it("end each record with CRLF, the last one too (2.1, 2.2)", () => expect(csv([["a"], ["b"]])).toBe("a\r\nb\r\n"));
  it("keep the spaces of a field (2.4)", () => expect(csv([[" a ", "b"]])).toBe(" a ,b\r\n"));
  it("enclose fields with commas, quotes and line breaks in quotes, and no others (2.5, 2.6)", () =>
    expect(csv([["a b", "a,b", 'a"b', "a\r\nb", "a\nb", "a\rb"]])).toBe('a b,"a,b","a""b","a\r\nb","a\nb","a\rb"\r\n'));
  it("double a quote within a field (2.7)", () => expect(csv([['say "hold"']])).toBe('"say ""hold"""\r\n'));
  it.each(["=1+1", "+1", "-1/2 in", "@name", "\tx", "\rx"])("guard %j: a spreadsheet would take it for a formula", (cell) =>
    expect(readCsv(csv([[cell]]))).toEqual([[`'${cell}`]]),
  );
  it.each(["1=1", "a+b", " =1", "'=1", ""])("leave %j as it is", (cell) => expect(readCsv(csv([["x", cell]]))).toEqual([["x", cell]]));
  it("give back whatever was put in, but for the guard", () =>
    fc.assert(
      fc.property(
        fc.array(fc.array(fc.string({ unit: fc.constantFrom("a", '"', ",", "\r", "\n", "=", "é", " ") }), { minLength: 2, maxLength: 4 })),
        (rows) => {
          const guarded = rows.map((row) => row.map((cell) => (/^[=\r]/.test(cell) ? `'${cell}` : cell)));
          expect(readCsv(csv(rows))).toEqual(guarded);
        },
      ),
    ));
});

describe("a record as a table", () => {
  const table = async () => {
    const job = await openedJob();
    await job.say({ type: "note", text: '=HYPERLINK("x"), he said\nand "went"' }, "Odd", { device: "cookie-aaaa" });
    await job.say({ type: "next" });
    const r = await job.app.request(`/jobs/${job.job}/record.csv`);
    const text = await r.text();
    return { job, r, text, rows: readCsv(text) };
  };
  it("has a header, then one line an entry, all of the same length (2.3, 2.4)", async () => {
    const { rows, job } = await table();
    expect(rows).toHaveLength(1 + (await job.entries()).length);
    expect(new Set(rows.map((row) => row.length)).size).toBe(1);
    expect(rows[0]!.slice(0, 4)).toEqual(["entry", "local time", "zone", "UTC"]);
  });
  it("says what it is: text/csv in UTF-8 with a header (3), a file to be kept", async () => {
    const { r, job } = await table();
    expect(r.headers.get("content-type")).toBe("text/csv; charset=utf-8; header=present");
    expect(r.headers.get("content-disposition")).toBe(`attachment; filename="record-${job.job}.csv"`);
  });
  it("has who, on which phone, what was said, the marks and the hash; the words of a person are no formula", async () => {
    const { rows, job, text } = await table();
    const cell = (row: number, column: string) => rows[row]![rows[0]!.indexOf(column)];
    expect([cell(2, "who"), cell(2, "role"), cell(2, "phone")]).toEqual(["Odd", "trainee", "phone 1"]);
    expect(cell(2, "taken as")).toBe('Note: =HYPERLINK("x"), he said\nand "went"');
    expect([cell(3, "marks"), cell(3, "hash")]).toEqual(["Refused", (await job.entries())[2]!.hash]);
    expect(text).not.toContain("cookie-");
  });
});
