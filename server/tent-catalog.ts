import { EXAMPLES } from "../machines/tent/examples.ts";
import type { KitCatalog } from "../machines/tent/load.ts";
import { planTent } from "../machines/tent/plan.ts";
import { checkSpec } from "../machines/tent/spec.ts";
import type { TentPlan } from "../machines/tent/types.ts";
import { exampleName } from "../views/parts/tent-facts.ts";
import type { Words } from "../views/text/words.ts";
import type { Fields } from "./input/form.ts";
import { kitToForm, readKit } from "./input/kit.ts";
import { Problem, type Sentence } from "./input/problem.ts";
import type { NamedTent } from "./input/saved-tent.ts";
import { tentToForm } from "./input/tent.ts";
import type { Dependencies } from "./jobs.ts";
import { Changed, foldedName, NameTaken, type SavedTent, type Write, WriteRepeated } from "./journal/catalog.ts";

/** A tent of the list with its plan; `version` is `null` for an example. `plan` is `null` where the saved spec cannot be read. */
export type ListedTent = {
  readonly id: string;
  readonly name: string;
  readonly version: number | null;
  readonly plan: TentPlan | null;
  readonly kit: KitCatalog | null;
};

/** Examples never change: they are planned once. */
let planned: readonly { readonly id: string; readonly plan: TentPlan }[] | undefined;

/** The list of tents: what is saved, and the examples, called in words. The one place where a saved tent is written. */
export function createTentCatalog({ journal, clock, newId }: Pick<Dependencies, "journal" | "clock" | "newId">, words: Words) {
  const { catalog } = journal;
  const examples = (): readonly ListedTent[] => {
    planned ??= EXAMPLES.map(({ id, spec }) => ({ id, plan: planTent(spec) }));
    return planned.map(({ id, plan }) => ({ id, name: exampleName(plan, words), version: null, plan, kit: null }));
  };
  const saved = async (): Promise<ListedTent[]> => (await catalog.tents()).map(listedTent);

  async function find(id: string): Promise<ListedTent | null> {
    const kept = await catalog.tent(id);
    return kept ? listedTent(kept) : (examples().find((e) => e.id === id) ?? null);
  }
  async function get(id: string): Promise<ListedTent> {
    const tent = await find(id);
    if (!tent) throw new Problem(404, (w) => w.errors.noTent(id));
    return tent;
  }
  /** A tent and its kit notes as the fields of a form. */
  async function form(id: string): Promise<Fields> {
    const { plan, kit } = await get(id);
    if (!plan) throw new Problem(409, (w) => w.errors.tentUnreadable);
    return { ...tentToForm(plan.spec, words), ...kitToForm(kit) };
  }

  /** Does a write once; a repeat is answered with the tent that it wrote. */
  async function once(
    write: Write,
    name: string,
    go: () => Promise<string>,
    changed: Sentence = (w) => w.errors.tentChanged,
  ): Promise<string> {
    const before = await catalog.written(write.key);
    if (before) {
      if (before.request !== write.request) throw new Problem(409, (w) => w.errors.keyUsed(write.key));
      return before.tent;
    }
    const example = examples().find((e) => foldedName(e.name) === foldedName(name));
    if (example) throw nameRefused((w) => w.errors.nameOfExample(example.name));
    try {
      return await go();
    } catch (error) {
      // The same write came twice at once, and the other was first.
      if (error instanceof WriteRepeated) return once(write, name, go, changed);
      if (error instanceof NameTaken) {
        const taken = (await catalog.tent(error.by))?.name ?? name;
        throw nameRefused((w) => w.errors.nameTaken(taken));
      }
      if (error instanceof Changed) throw new Problem(409, changed);
      throw error;
    }
  }
  const add = (tent: NamedTent, write: Write) =>
    once(write, tent.name, async () => {
      const id = newId();
      await catalog.add(id, { ...tent, at: clock().wall }, write);
      return id;
    });
  const change = (id: string, version: number, tent: NamedTent, write: Write) =>
    once(write, tent.name, async () => {
      await catalog.change(id, version, { ...tent, at: clock().wall }, write);
      return id;
    });
  const remove = (id: string, version: number, write: Write) =>
    once(
      write,
      "",
      async () => {
        await catalog.remove(id, version, write);
        return id;
      },
      (w) => w.errors.tentChangedSince,
    );

  return { saved, examples, find, get, form, add, change, remove };
}
export type TentCatalog = ReturnType<typeof createTentCatalog>;

const nameRefused = (why: Sentence) => new Problem(422, (w) => w.errors.tentRefused, { name: why });

/** Checked again: what lies in a file may be of an older program, or spoiled. */
function listedTent({ id, name, spec, kit, version }: SavedTent): ListedTent {
  const checked = checkSpec((spec ?? {}) as object);
  const read = readKit(kit);
  return { id, name, version, plan: "spec" in checked ? planTent(checked.spec) : null, kit: "kit" in read ? (read.kit ?? null) : null };
}
