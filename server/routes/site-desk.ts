import type { Context } from "hono";
import type { SiteGroup } from "../../views/pages/site/fields.ts";
import type { SitePage } from "../../views/pages/site/frame.tsx";
import type { SiteState } from "../../views/pages/site/state.ts";
import type { SiteInput } from "../input/site-form.ts";

/** Why a site changes, the key of the request, and how far the tent's A–B turns with it, degrees clockwise. */
export type SiteChange = { readonly because: string; readonly key: string | undefined; readonly turnDeg?: number };

/** The site of a job or of a draft, and what a change of it does there: it is put forward, or kept. */
export type SiteDesk = {
  readonly state: SiteState;
  readonly hurt: SitePage["hurt"];
  /** Puts a whole site forward, or keeps it. Throws a Problem that names what is wrong. */
  readonly put: (site: SiteInput, change: SiteChange) => Promise<Response>;
  /** Adds one line, wire or thing at once; `null` where all changes are the same. */
  readonly add: ((group: SiteGroup, one: Readonly<Record<string, unknown>>, key: string | undefined) => Promise<Response>) | null;
};

/** The desk that a request is about. Throws a Problem if there is none. */
export type DeskOf = (c: Context) => Promise<SiteDesk>;
