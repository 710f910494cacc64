import { LayoutDrawing, type LayoutProps, type Look } from "../../drawing/layout.tsx";

/** A drawing that is 1320 px wide at its own size on a screen fills 190 mm between the margins of A4 or Letter. */
const MM_PER_PX = 190 / 1320;
/** Dark on light whatever shows it, and as large as a sheet of paper. */
const ON_PAPER: Look = {
  palette: { ink: "#000000", ground: "#ffffff" },
  font: "sans-serif",
  length: (px) => `${(px * MM_PER_PX).toFixed(1)}mm`,
  backed: true,
};

/** The layout drawing as a file of its own. */
export const standalone = (props: Omit<LayoutProps, "look">): string =>
  `<?xml version="1.0" encoding="UTF-8"?>\n${<LayoutDrawing {...props} look={ON_PAPER} />}\n`;
