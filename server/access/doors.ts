import type { Role } from "../../machines/install/brief.ts";
import { mayAsk } from "../../machines/install/rights.ts";
import { ROLES } from "../../machines/install/roles.ts";

/**
 * Who may open a page or send a form: anybody; the office; the office, or a script with a token; or, of a job, those who are on it
 * in one of these roles.
 */
export type Door = "anybody" | "office" | "officeOrToken" | readonly Role[];

/** All who are on a job. Who watches the standing tent is let in while it stands. */
export const ON_JOB: readonly Role[] = ROLES;
/** Those who raise it, who learn, and the manager. */
const SITE: readonly Role[] = ROLES.filter((role) => role !== "watcher" && role !== "siteOwner");
/** Who may ask for a change of the job; the chart says who may agree. */
const CHANGES: readonly Role[] = ["lead", "deputy", "competent", "manager"];
/** Who hands out the codes of a job. */
export const HAND_OUT_CODES: readonly Role[] = ["lead", "deputy", "manager"];

/** Pages beside the guide that show nothing but the guide does. */
const BESIDE_GUIDE = ["more", "words", "settings", "phone", "people", "wind", "weather", "air", "call", "picture", "answers"] as const;
const beside = Object.fromEntries(BESIDE_GUIDE.map((page) => [`GET /jobs/:id/${page}`, ON_JOB]));

/** Every way into the program, and who may take it: the one table. What is not in it is open to nobody. */
export const DOORS: Readonly<Record<string, Door>> = {
  "GET /": "anybody",
  "GET /manifest.webmanifest": "anybody",
  "GET /phone": "anybody",
  "GET /phone/clock.json": "anybody",
  "GET /phone/sayable.json": "anybody",
  "GET /trust": "anybody",
  "GET /trust/ridgecall-site-authority.crt": "anybody",
  "GET /hand-work": "anybody",
  "GET /join": "anybody",
  "POST /join": "anybody",
  "GET /office/in": "anybody",
  "POST /office/in": "anybody",
  // A token in hand, and a link printed where the server was started, are what they show.
  "GET /office/first": "anybody",

  "GET /jobs.json": "officeOrToken",
  "POST /jobs": "officeOrToken",
  "GET /office": "office",
  "POST /office/out": "office",
  "POST /office/passphrase": "office",
  "POST /office/tokens": "office",
  "POST /office/tokens/revoke": "office",
  "GET /jobs/:id/names": "office",
  "POST /jobs/:id/names": "office",
  "GET /findings": "office",
  "GET /findings.json": "officeOrToken",
  "POST /findings/followups": "office",
  "GET /findings/jobs": "office",
  "GET /findings/jobs.json": "officeOrToken",
  "GET /jobs/new": "office",
  "GET /learning": "office",
  "GET /drafts": "office",
  "POST /drafts": "office",
  "GET /drafts/new": "office",
  "POST /drafts/preview": "office",
  "GET /drafts/:id": "office",
  "GET /drafts/:id/:step": "office",
  "POST /drafts/:id/:step": "office",
  "GET /drafts/:id/ground-plan": "office",
  "GET /drafts/:id/ground-plan/drawing.svg": "office",
  "GET /drafts/:id/ground-plan/lines": "office",
  "POST /drafts/:id/ground-plan/lines": "office",
  "GET /drafts/:id/ground-plan/import": "office",
  "POST /drafts/:id/ground-plan/import": "office",
  "GET /drafts/:id/ground-plan/place": "office",
  "POST /drafts/:id/ground-plan/place": "office",
  "GET /drafts/:id/anchors": "office",
  "POST /drafts/:id/anchors": "office",
  "GET /drafts/:id/weather-plan": "office",
  "POST /drafts/:id/weather-plan": "office",
  "GET /drafts/:id/throw-away": "office",
  "POST /drafts/:id/throw-away": "office",
  "GET /firm/people": "office",
  "POST /firm/people": "office",
  "GET /tents": "office",
  "GET /tents.json": "officeOrToken",
  "GET /tents/new": "office",
  "POST /tents": "officeOrToken",
  "POST /tents/preview": "office",
  "GET /tents/:file": "officeOrToken",
  "GET /tents/:id": "office",
  "POST /tents/:id": "officeOrToken",
  "GET /tents/:id/edit": "office",
  "GET /tents/:id/remove": "office",
  "POST /tents/:id/remove": "officeOrToken",

  "GET /jobs/:file": ON_JOB,
  "GET /jobs/:id": ON_JOB,
  "GET /jobs/:id/now": ON_JOB,
  "GET /jobs/:id/live": ON_JOB,
  "GET /jobs/:id/hurt/live": ON_JOB,
  "GET /jobs/:id/people/live": ON_JOB,
  "GET /jobs/:id/drawing": ON_JOB,
  "GET /jobs/:id/sayable.json": ON_JOB,
  // Who may say what is the chart's; whose word it is, of the one who sends it.
  "POST /jobs/:id/say": ON_JOB,
  ...beside,
  "GET /jobs/:id/photos": ON_JOB,
  "GET /jobs/:id/photos.json": ON_JOB,
  "GET /jobs/:id/photos/:hash": ON_JOB,
  "POST /jobs/:id/photo": mayAsk("photo"),
  "GET /jobs/:id/tent": SITE,
  "GET /jobs/:id/trouble": SITE,
  "GET /jobs/:id/stand-down": SITE,
  "GET /jobs/:id/change": SITE,
  "GET /jobs/:id/plan": SITE,
  "GET /jobs/:id/plan.json": SITE,
  "GET /jobs/:id/layout": SITE,
  "GET /jobs/:id/layout.svg": SITE,
  "GET /jobs/:id/layout.dxf": SITE,
  "GET /jobs/:id/layout.json": SITE,
  "GET /jobs/:id/marks.csv": SITE,
  "GET /jobs/:id/truck": SITE,
  "POST /jobs/:id/truck": SITE,
  "GET /jobs/:id/truck/live": SITE,
  "GET /jobs/:id/truck.json": SITE,
  "GET /jobs/:id/truck.csv": SITE,
  "GET /jobs/:id/time": SITE,
  "GET /jobs/:id/time.json": SITE,
  "GET /jobs/:id/record": SITE,
  "GET /jobs/:id/record.json": SITE,
  "GET /jobs/:id/record.csv": SITE,
  "GET /jobs/:id/report": SITE,
  "GET /jobs/:id/proof": SITE,
  "GET /jobs/:id/proof.json": SITE,
  "GET /jobs/:id/check": SITE,
  "GET /jobs/:id/learn": SITE,
  "POST /jobs/:id/learn": SITE,
  "GET /jobs/:id/learn/questions": SITE,
  "POST /jobs/:id/learn/questions": SITE,
  "POST /jobs/:id/learn/aside": SITE,
  "GET /jobs/:id/rehearse": SITE,
  "POST /jobs/:id/rehearse": SITE,
  "POST /jobs/:id/wait": SITE,
  "GET /jobs/:id/look-back": SITE,
  "POST /jobs/:id/look-back": SITE,
  "GET /jobs/:id/amend": CHANGES,
  "POST /jobs/:id/amend": CHANGES,
  "GET /jobs/:id/discrepancy": CHANGES,
  "POST /jobs/:id/discrepancy": CHANGES,
  "GET /jobs/:id/weather-plan": ON_JOB,
  "POST /jobs/:id/weather-plan": CHANGES,
  "GET /jobs/:id/anchors": ON_JOB,
  "POST /jobs/:id/anchors": CHANGES,
  // Its owner reads what the tent keeps clear of. Who may say what of it is the chart's: one line more is taken from anybody.
  "GET /jobs/:id/site": ON_JOB,
  "GET /jobs/:id/site/drawing.svg": ON_JOB,
  "GET /jobs/:id/site/lines": ON_JOB,
  "POST /jobs/:id/site/lines": ON_JOB,
  "GET /jobs/:id/site/import": CHANGES,
  "POST /jobs/:id/site/import": CHANGES,
  "GET /jobs/:id/site/place": CHANGES,
  "POST /jobs/:id/site/place": CHANGES,
  "GET /jobs/:id/facts": CHANGES,
  "POST /jobs/:id/facts": CHANGES,
  "GET /jobs/:id/codes": HAND_OUT_CODES,
  "POST /jobs/:id/codes": HAND_OUT_CODES,
};

/** The name of a way in, by its method and its path as the application knows it, without what its parts look like. */
export const doorName = (method: string, path: string): string => `${method} ${path.replaceAll(/\{(?:[^{}]|\{[^{}]*\})*\}/g, "")}`;
