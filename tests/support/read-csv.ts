/** Reads by the grammar of RFC 4180, section 2, and throws on what that grammar does not allow. */
export function readCsv(text: string): string[][] {
  const rows: string[][] = [];
  let row: string[] = [];
  let at = 0;
  while (at < text.length) {
    const field = /"(?:[^"]|"")*"|[^",\r\n]*/y;
    field.lastIndex = at;
    const raw = field.exec(text)![0];
    row.push(raw.startsWith('"') ? raw.slice(1, -1).replaceAll('""', '"') : raw);
    at += raw.length;
    if (text[at] === ",") at++;
    else if (text.startsWith("\r\n", at)) {
      rows.push(row);
      row = [];
      at += 2;
    } else throw new Error(`at ${at}: ${JSON.stringify(text.slice(at, at + 10))}`);
  }
  return rows;
}
