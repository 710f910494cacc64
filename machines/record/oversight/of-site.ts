import { digest } from "../../digest/digest.ts";
import type { Brief } from "../../install/brief.ts";
import type { Shortfall } from "../../install/checks/computed.ts";
import { nameOf } from "../../install/found.ts";
import { shortfallsIn, shutBy } from "../../install/found-in.ts";
import { withPeople } from "../doubts/doubt.ts";
import { effectiveCommandBy } from "../effective-command.ts";
import { frozeIn, frozenIn } from "../in-force.ts";
import type { Finding } from "./finding.ts";
import { commonTo, type Seen } from "./said-then.ts";

/** What an entry does to a site that somebody should look at: more of it than was told, or less in the way than there was. */
export function findingsOfSite(seen: Seen): Finding[] {
  const { outcome } = seen.entry;
  if (!("did" in outcome)) return [];
  return outcome.did === "found" ? found(seen) : outcome.did === "amended" ? corrected(seen) : [];
}

function found(seen: Seen): Finding[] {
  const { entry, earlier, folds } = seen;
  const command = effectiveCommandBy(entry, earlier);
  const to = frozeIn(entry.command.type === "correct" ? earlier(entry.command.target) : entry);
  if (command.type !== "found" || !to) return [];
  const facts = { name: nameOf(command.what), shuts: shutBy(command.what, to.script) };
  return [{ kind: "found", ...commonTo(entry.no, seen), entries: [entry.no], phase: folds[0].phase, by: [command.by], asks: null, facts }];
}

/** A gate that was shut by what was worked out, and is open as something was entered otherwise, not as the tent went elsewhere. */
function corrected(seen: Seen): Finding[] {
  const { entry, earlier, folds, script } = seen;
  const shut = shortfallsIn(script);
  const proposed = entry.command.type === "agree" ? earlier(entry.command.target) : null;
  if (shut.length === 0 || proposed?.kind !== "command" || proposed.command.type !== "amend") return [];
  const { because, by, to } = proposed.command;
  const still = new Set(shortfallsIn(to.script).map(keyOf));
  const was = frozenIn(folds[0].frozenAt, earlier).brief;
  const opened = shut.filter((one) => !still.has(keyOf(one)) && digest.of(enteredOf(one, was)) !== digest.of(enteredOf(one, to.brief)));
  if (opened.length === 0) return [];
  const common = { ...commonTo(entry.no, seen), entries: [proposed.no, entry.no], phase: folds[0].phase };
  return [{ kind: "corrected", ...common, by: withPeople([by], [entry.command.by]), asks: null, facts: { because, opened } }];
}

const keyOf = ({ kind, id }: Shortfall): string => `${kind} ${id ?? ""}`;

/** What is entered of that which stood too near; `null` where it is not on the site any more. */
function enteredOf({ kind, id }: Shortfall, { siteModel }: Brief): unknown {
  if (!siteModel) return null;
  if (kind === "ground") return siteModel.ground;
  if (kind === "ticketArea") return siteModel.ticketArea;
  return [...siteModel.buried, ...siteModel.overhead, ...siteModel.things].find((one) => one.id === id) ?? null;
}
