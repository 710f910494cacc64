import { foundIntent } from "../../machines/conversation/found-meant.ts";
import type { Intent } from "../../machines/install/commands.ts";
import type { Unnamed } from "../../machines/install/found.ts";
import type { Frozen } from "../../machines/install/step.ts";
import { Problem, type Sentence } from "./problem.ts";
import { readSiteModel } from "./site-model.ts";
import { noFields } from "./strict.ts";

const LISTS = { buried: "buried", overhead: "overhead", thing: "things" } as const;

/**
 * One line, wire or thing that was found, as a page or a script tells it: its list, and its fields as a site has them, but without
 * a name, which the program gives. Throws a Problem that names every field that is wrong.
 */
export function readFound(
  frozen: Frozen,
  { is, ...told }: { readonly is: keyof typeof LISTS } & Record<string, unknown>,
): Extract<Intent, { type: "found" }> {
  const list = LISTS[is];
  const read = readSiteModel({ [list]: [{ ...told, id: "found", ...(is === "buried" ? { told: told.told ?? "found" } : {}) }] });
  if ("wrong" in read) {
    const fields = noFields<Sentence>();
    for (const [field, sentence] of Object.entries(read.wrong)) fields[field.replace(`siteModel.${list}.0.`, "what.")] = sentence;
    throw new Problem(422, (w) => w.errors.bodyShape, fields);
  }
  const { buried, overhead, things } = read.siteModel;
  return foundIntent(frozen, unnamed({ is, one: buried[0] ?? overhead[0] ?? things[0]! }));
}

function unnamed({ is, one }: { is: keyof typeof LISTS; one: { readonly id: string } }): Unnamed {
  const { id: _, ...rest } = one;
  return (is === "thing" ? { is, thing: rest } : { is, line: rest }) as Unnamed;
}
