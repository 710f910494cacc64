import { clientWords } from "../../../parts/client-words.ts";
import { regions } from "../../../regions.ts";
import { notice } from "./notice.ts";

/** The server says every 15 s that it is there; after this long without, the screen is on its own. */
const SILENCE_MS = 40_000;

type Connection = { reader?: { cancel: () => void } };

/** Says so when a press did not get through, and grays the screen while the server is out of reach. */
export function watchContact(): void {
  let connection: Connection | null = null;
  let timer = 0;
  const heard = () => {
    clearTimeout(timer);
    timer = window.setTimeout(() => {
      away(true);
      connection?.reader?.cancel();
    }, SILENCE_MS);
    away(false);
  };
  document.addEventListener("htmx:sse:after:connection", (event) => {
    connection = (event as CustomEvent<{ connection: Connection }>).detail.connection;
    heard();
  });
  for (const name of ["beat", "htmx:sse:after:message"]) document.addEventListener(name, heard);
  // A drawing that did not come was not pressed for, and is asked for again by itself.
  document.addEventListener("htmx:error", ({ target }) => (target as Element).id !== regions.desk && notice(clientWords().notSent));
  // From the start: a first connection that hangs is silence too.
  if (document.getElementById(regions.live)) heard();
  window.addEventListener("offline", () => away(true));
  window.addEventListener("online", heard);
}

function away(is: boolean): void {
  const was = document.body.classList.contains("away");
  document.body.classList.toggle("away", is);
  if (is) notice(clientWords().offline);
  else if (was) notice("");
}
