/** Every style sheet there is, by the name that a page asks for it: what all pages wear, what some share, and each page's own. */
export const STYLESHEETS = {
  ridgecall: "parts/style.css",
  "tent-part": "parts/tent-part.css",
  marks: "parts/findings.css",
  guide: "pages/guide/style.css",
  "open-job": "pages/open-job/style.css",
  plan: "pages/plan/style.css",
  layout: "pages/layout/style.css",
  truck: "pages/truck/style.css",
  time: "pages/time/style.css",
  record: "pages/record/style.css",
  findings: "pages/findings/style.css",
  tents: "pages/tents/style.css",
} as const;
export type Stylesheet = keyof typeof STYLESHEETS;
