import { Hono } from "hono";
import { ROLES } from "../../machines/install/roles.ts";
import { FirmPeoplePage } from "../../views/pages/firm/people.tsx";
import type { Words } from "../../views/text/words.ts";
import type { LiveDrafts } from "../draft/drafts.ts";
import type { Dependencies } from "../jobs.ts";
import { formBody } from "./body.ts";
import { page } from "./page.ts";

const draftIn = (id: string | undefined): string | null => (id !== undefined && /^[\w-]+$/.test(id) ? id : null);

/** A role as it lies in the file, which may be of another program. */
const roleIn = (role: string, words: Words): string => {
  const known = ROLES.find((is) => is === role);
  return known ? words.roleName(known) : role;
};

/** Whom the firm offers for its next job. The one who is taken off goes from the list, from what is not opened yet, and with what they learned. */
export function firmRoutes({ journal: { firm, learning } }: Pick<Dependencies, "journal">, drafts: LiveDrafts) {
  const app = new Hono();
  app.get("/firm/people", async (c) => {
    const words = c.get("words");
    const people = (await firm.people()).map(({ name, role }) => ({ name, role: roleIn(role, words) }));
    return c.html(page(c, <FirmPeoplePage people={people} draft={draftIn(c.req.query("draft"))} words={words} />));
  });
  app.post("/firm/people", async (c) => {
    const { name = "", draft } = await formBody(c);
    await drafts.forget(name);
    await learning.forget(name);
    const from = draftIn(draft);
    return c.redirect(from === null ? "/firm/people" : `/firm/people?draft=${from}`, 303);
  });
  return app;
}
