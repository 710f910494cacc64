/**
 * Rows as comma-separated values (RFC 4180): each line ended by CRLF, cells in quotes where they hold a quote, a comma or a
 * line break. A text that a spreadsheet would run as a formula gets an apostrophe before it, which makes it text there;
 * a number, also one below zero, is left a number.
 */
export const csv = (rows: readonly (readonly (string | number)[])[]): string =>
  rows.map((row) => `${row.map((cell) => quoted(guarded(cell))).join(",")}\r\n`).join("");

const guarded = (cell: string | number) => (typeof cell === "string" && /^[=+\-@\t\r]/.test(cell) ? `'${cell}` : String(cell));
const quoted = (cell: string) => (/["\r\n,]/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell);
