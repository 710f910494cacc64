import { type Context, Hono } from "hono";
import { SignInPage } from "../../views/pages/office/sign-in.tsx";
import { OfficePage, type OfficeState } from "../../views/pages/office/view.tsx";
import type { Access } from "../access/access.ts";
import type { Entrance } from "../access/entrance.ts";
import type { FirstLink } from "../access/first-link.ts";
import { makeToken } from "../access/tokens.ts";
import { inWords, Problem } from "../input/problem.ts";
import type { Journal } from "../journal/journal.ts";
import { formBody } from "./body.ts";
import { page } from "./page.ts";
import { lastOf } from "./report.tsx";

/** So much of the log is shown. */
const EVENTS_SHOWN = 100;
const MAX_NAME = 60;

/** The office: signing in and out, its passphrase, tokens for scripts, and the log of who came in. */
export function officeRoutes(access: Access, entrance: Entrance, firstLink: FirstLink, journal: Pick<Journal, "house">) {
  const app = new Hono();
  /** Only a page of this server: nobody is sent elsewhere after signing in. */
  const pageWanted = (to: string | undefined): string => (to !== undefined && /^\/(?![/\\])[\w/.-]*$/.test(to) ? to : "/");
  const signIn = (c: Context, to: string, problem: string | null, status: Problem["status"] | 200 = 200) =>
    c.html(page(c, <SignInPage to={to} problem={problem} words={c.get("words")} />), status);

  app.get("/office/in", (c) => signIn(c, pageWanted(c.req.query("to")), null));
  app.post("/office/in", async (c) => {
    const { passphrase = "", to } = await formBody(c);
    const wanted = pageWanted(to);
    try {
      await entrance.tryPassphrase(c.get("visitor"), passphrase);
    } catch (error) {
      if (error instanceof Problem) return signIn(c, wanted, error.sentence(c.get("words")), error.status);
      throw error;
    }
    await access.letIntoOffice(c);
    return c.redirect(wanted, 303);
  });
  // What was printed where the server was started lets in once whoever can read it there.
  app.get("/office/first", async (c) => {
    if (!firstLink.take(c.req.query("key") ?? "")) return signIn(c, "/", c.get("words").office.linkUsed, 403);
    await access.letIntoOffice(c);
    return c.redirect("/", 303);
  });
  app.post("/office/out", async (c) => {
    await access.leaveOffice(c);
    return c.redirect("/", 303);
  });

  const stateOf = async (c: Context, told: Partial<OfficeState> = {}): Promise<OfficeState> => {
    const words = c.get("words");
    const when = (at: number) => words.when.dayAndClock("UTC", at);
    const [tokens, events, house] = await Promise.all([access.store.tokens(), access.store.events(EVENTS_SHOWN), lastOf(journal)]);
    return {
      tokens: tokens.map(({ id, name, at, revokedAt }) => ({ id, name, made: when(at), revoked: revokedAt !== null })),
      events: events.map((event) => ({
        at: when(event.at),
        text: words.office.event(event.is),
        about: words.office.eventAbout(event.address, event.job, event.what),
      })),
      house,
      secret: null,
      notice: null,
      problems: {},
      ...told,
    };
  };
  const officePage = async (c: Context, told: Partial<OfficeState> = {}, status: Problem["status"] | 200 = 200) =>
    c.html(page(c, <OfficePage state={await stateOf(c, told)} words={c.get("words")} />), status);

  app.get("/office", (c) => officePage(c));
  app.post("/office/tokens", async (c) => {
    const name = ((await formBody(c)).name ?? "").normalize("NFKC").trim();
    if (name === "" || name.length > MAX_NAME) {
      const { errors } = c.get("words");
      return officePage(c, { problems: { name: name === "" ? errors.empty : errors.tooLong(MAX_NAME) } }, 422);
    }
    const { token, secret } = makeToken(name, c.get("visitor").now, access.random);
    await access.store.keepToken(token);
    await access.log(c.get("visitor"), "tokenMade", { what: name });
    return officePage(c, { secret });
  });
  app.post("/office/tokens/revoke", async (c) => {
    const { id = "" } = await formBody(c);
    const token = (await access.store.tokens()).find((one) => one.id === id);
    if (token && token.revokedAt === null) {
      await access.store.keepToken({ ...token, revokedAt: c.get("visitor").now });
      await access.log(c.get("visitor"), "tokenRevoked", { what: token.name });
    }
    return c.redirect("/office", 303);
  });
  app.post("/office/passphrase", async (c) => {
    const { now = "", next = "" } = await formBody(c);
    const wrong = (field: string, error: unknown) => {
      if (!(error instanceof Problem)) throw error;
      return officePage(c, { problems: inWords({ [field]: error.sentence }, c.get("words")) }, error.status);
    };
    try {
      await entrance.tryPassphrase(c.get("visitor"), now);
    } catch (error) {
      return wrong("now", error);
    }
    try {
      await entrance.setPassphrase(next);
    } catch (error) {
      return wrong("next", error);
    }
    // Every desk is out; this one has just shown both.
    await access.letIntoOffice(c);
    await access.log(c.get("visitor"), "passphraseSet");
    return officePage(c, { notice: c.get("words").office.changed });
  });
  return app;
}
