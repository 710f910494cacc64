/** What every page wears, in the order of its layers. */
const SHARED = [
  "parts/tokens.css",
  "parts/base.css",
  "parts/parts.css",
  "parts/page-header.css",
  "parts/hurt.css",
  "parts/lightning.css",
] as const;
const MARKS = "parts/findings.css";
const DIGESTS = "parts/digests.css";
const PICTURE = "drawing/call/style.css";
const HAND_WORK = "drawing/hand-work/style.css";
const KEYPAD = "parts/keypad.css";
const GUIDE = ["frame", "strip", "call", "site", "stop", "watch", "drawing", "answers", "dock"] as const;
const PHONE = "pages/phone/style.css";
const TENT_PART = "parts/tent-part.css";
const LOAD_LINES = "pages/site/loads.css";
const sheet = (...own: readonly string[]): readonly string[] => [...SHARED, ...own];

/**
 * Every style sheet there is, by the name that a page asks for it, with the files it is made of. A page has one: what all
 * wear is 1.5 kB of it, which each kind of page brings once; a request of its own for that would cost every first visit about
 * as much in heads alone, and a turn of the link.
 */
export const STYLESHEETS = {
  plain: sheet(),
  home: sheet("pages/home/style.css"),
  guide: sheet(
    KEYPAD,
    PICTURE,
    HAND_WORK,
    PHONE,
    "pages/join/codes.css",
    "pages/learn/style.css",
    "pages/photos/style.css",
    "pages/rehearse/style.css",
    ...GUIDE.map((part) => `pages/guide/${part}.css`),
  ),
  phone: sheet(PHONE),
  anchors: sheet("pages/draft/style.css", LOAD_LINES, "pages/anchors/style.css"),
  "weather-plan": sheet("pages/draft/style.css", "pages/weather-plan/style.css"),
  "open-job": sheet(TENT_PART, "pages/open-job/style.css"),
  draft: sheet(TENT_PART, "pages/draft/style.css", "pages/weather-plan/style.css"),
  join: sheet(DIGESTS, "pages/join/style.css"),
  learning: sheet("pages/join/style.css", "pages/learn/style.css"),
  plan: sheet("pages/plan/style.css"),
  site: sheet(LOAD_LINES, "pages/site/clearances.css", "pages/site/style.css"),
  layout: sheet(DIGESTS, "pages/layout/style.css"),
  truck: sheet(KEYPAD, DIGESTS, "pages/truck/style.css", "pages/truck/paper.css"),
  time: sheet("pages/time/style.css"),
  record: sheet(MARKS, DIGESTS, "pages/record/style.css"),
  proof: sheet(MARKS, DIGESTS, "pages/proof/style.css"),
  report: sheet(MARKS, DIGESTS, "pages/report/style.css", "pages/report/paper.css"),
  findings: sheet(MARKS, "pages/findings/style.css", "pages/findings/charts.css"),
  "at-a-glance": sheet(MARKS, "pages/at-a-glance/style.css"),
  tents: sheet("pages/tents/style.css"),
  tent: sheet(TENT_PART, "pages/tents/style.css"),
  "tent-form": sheet(TENT_PART),
  "look-back": sheet("pages/look-back/style.css"),
  trust: sheet("pages/trust/style.css"),
  "hand-work": sheet(HAND_WORK, "pages/hand-work/style.css"),
} satisfies Readonly<Record<string, readonly string[]>>;
export type Stylesheet = keyof typeof STYLESHEETS;
