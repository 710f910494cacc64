import { Hono } from "hono";
import { HandWorkPage } from "../../views/pages/hand-work/view.tsx";
import { page } from "./page.ts";

/** All drawings of the hand work. `?job=` is where somebody came from; one that no job is called is left out. */
export function handWorkRoutes() {
  const app = new Hono();
  app.get("/hand-work", (c) => {
    const from = c.req.query("job") ?? "";
    return c.html(page(c, <HandWorkPage words={c.get("words")} job={/^[\w-]{1,80}$/.test(from) ? from : null} />));
  });
  return app;
}
