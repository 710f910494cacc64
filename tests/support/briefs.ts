import type { Brief, Person, Sheet, Ticket } from "../../machines/install/brief.ts";
import { freeze } from "../../machines/install/freeze.ts";
import type { Frozen } from "../../machines/install/step.ts";
import type { SpecInput } from "../../machines/tent/spec-input.ts";
import { demoBrief, type WholeInput } from "../../server/demo.ts";
import { readBrief } from "../../server/input/brief.ts";
import { specOf } from "../tent/tents.ts";

/** The job that tests are about, as an office script sends it: the demo job, on a ticket of June 2026. */
export const brief = (): WholeInput => structuredClone(demoBrief("2026-06-01", "2026-06-20"));

/** A brief of which nothing is unknown. */
export type WholeBrief = Brief & { readonly sheet: Sheet; readonly ticket: Ticket };

/** What of a brief is changed: single facts of a part, or who is on the job. */
export type Changes = { readonly [P in "sheet" | "site" | "ticket" | "use"]?: Partial<WholeBrief[P]> } & {
  readonly crew?: readonly Person[];
};

/** The same job for another tent, as the machines know it, except for what is changed. */
export function briefFor(tent: SpecInput, { sheet, site, ticket, use, crew }: Changes = {}): WholeBrief {
  const demo = readBrief(brief()).frozen.brief as WholeBrief;
  return {
    ...demo,
    tent: specOf(tent),
    sheet: { ...demo.sheet, ...sheet },
    site: { ...demo.site, ...site },
    ticket: { ...demo.ticket, ...ticket },
    use: { ...demo.use, ...use },
    crew: crew ?? demo.crew,
  };
}

export const frozenFor = (input: SpecInput, changes: Changes = {}): Frozen => freeze(briefFor(input, changes));

/** The same brief before anybody has its sheet, its ticket or its places. */
export const nothingKnown = (known: Brief): Brief => ({
  ...known,
  sheet: null,
  ticket: null,
  site: { ...known.site, rallyPoint: null, stormShelter: null, firstAid: null },
});
