import { watchContact } from "./contact.ts";
import { addKeypads } from "./keypad.ts";
import { watchPresses } from "./press.ts";

addKeypads(document);
new MutationObserver(() => addKeypads(document)).observe(document.body, { subtree: true, childList: true });
watchPresses();
watchContact();
document.querySelector("article.call")?.scrollIntoView({ block: "start" });
