const INK = "#000000";
const GROUND = "#ffffff";
/** A drawing that is 1320 px wide at its own size on a screen fills 190 mm between the margins of A4 or Letter. */
const MM_PER_PX = 190 / 1320;

/** A drawing of ours as a file of its own: dark on light whatever shows it, and as large as a sheet of paper. */
export function standalone(svg: string): string {
  const [, open, title, rest] = /^(<svg [^>]*>)(<title>[^<]*<\/title>)([\s\S]*)$/.exec(svg)!;
  const [, wide, high] = / viewBox="0 0 ([\d.]+) ([\d.]+)"/.exec(open!)!;
  const head = open!
    .replace(/ (width|height)="(\d+)"/g, (_, side, px) => ` ${side}="${(Number(px) * MM_PER_PX).toFixed(1)}mm"`)
    .replace("system-ui, sans-serif", "sans-serif");
  const ground = `<rect width="${wide}" height="${high}" fill="${GROUND}"/>`;
  const drawn = rest!.replaceAll('="currentColor"', `="${INK}"`).replaceAll('="Canvas"', `="${GROUND}"`);
  return `<?xml version="1.0" encoding="UTF-8"?>\n${head}${title}${ground}${drawn}\n`;
}
