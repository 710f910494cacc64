import type { MiddlewareHandler } from "hono";
import { setCookie } from "hono/cookie";
import { languageDetector } from "hono/language";
import type { Languages } from "../../views/text/languages.ts";
import type { Words } from "../../views/text/words.ts";

declare module "hono" {
  interface ContextVariableMap {
    /** The language that this request is answered in. */
    words: Words;
  }
}

const COOKIE = "language";
const YEAR_S = 365 * 24 * 3600;

/**
 * Chooses the language of a request: as its address asks (`?lang=`), else as it asked before, else as its browser prefers,
 * else the first there is. What an address asks for is remembered.
 */
export function inLanguage(languages: Languages): MiddlewareHandler[] {
  const [first] = languages;
  const choose: MiddlewareHandler = async (c, next) => {
    const words = languages.find(({ lang }) => lang === c.get("language")) ?? first;
    c.set("words", words);
    if (c.req.query("lang") === words.lang)
      setCookie(c, COOKIE, words.lang, { path: "/", sameSite: "Lax", httpOnly: true, maxAge: YEAR_S });
    await next();
  };
  const detect = languageDetector({
    supportedLanguages: languages.map(({ lang }) => lang),
    fallbackLanguage: first.lang,
    lookupCookie: COOKIE,
    caches: false,
  });
  return [detect, choose];
}
