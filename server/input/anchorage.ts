import * as v from "valibot";
import type { FigureProblem } from "../../machines/figures/problems.ts";
import { anchorFactsOf } from "../../machines/install/anchor-facts.ts";
import { type Anchorage, NOTHING_TOLD } from "../../machines/install/anchorage.ts";
import type { Brief } from "../../machines/install/brief.ts";
import { problemsOfFriction } from "../../machines/loads/ballast.ts";
import { problemsOfFacts } from "../../machines/loads/facts.ts";
import { planTent } from "../../machines/tent/plan.ts";
import { saidOf, wrongKindOf } from "./issue.ts";
import type { Sentence, Wrong } from "./problem.ts";
import { noFields, strict } from "./strict.ts";

/** Any value; left out, what nobody has told. What it is held against is the machines'. */
const told = <K extends keyof Anchorage>(key: K) => v.optional(v.unknown(), NOTHING_TOLD[key]);
const stakes = v.optional(v.unknown(), null);
const pull = strict({ lbf: v.optional(v.unknown()), direction: v.optional(v.unknown()), softestSpot: v.optional(v.unknown()) });
const schema = strict({
  gustMph: told("gustMph"),
  exposure: told("exposure"),
  elevationFt: told("elevationFt"),
  underRoof: told("underRoof"),
  material: told("material"),
  soil: told("soil"),
  groundState: told("groundState"),
  pulls: v.optional(v.array(pull), []),
  rainSincePulls: told("rainSincePulls"),
  factorOfSafety: told("factorOfSafety"),
  sheetAllows: v.optional(strict({ corner: stakes, seamEnd: stakes, side: stakes }), { corner: null, seamEnd: null, side: null }),
  friction: v.optional(v.nullable(strict({ coefficient: v.optional(v.unknown()), by: v.optional(v.unknown()) }))),
});

/** What the anchors of a job are screened by, as a page or an office script sends it, or what is wrong with it, by field. */
export function readAnchorage(
  input: unknown,
  brief: Pick<Brief, "tent" | "sheet" | "use">,
): { readonly anchorage: Anchorage } | { readonly wrong: Wrong } {
  const read = v.safeParse(schema, input);
  const wrong = noFields<Sentence>();
  if (!read.success) {
    for (const issue of read.issues) wrong[fieldOf(v.getDotPath(issue) ?? "")] ??= saidOf(issue) ?? wrongKindOf(issue);
    return { wrong };
  }
  const { friction, ...rest } = read.output;
  // Not checked yet: what is wrong with it is found next, and then nothing of it is used.
  const anchorage = { ...rest, ...(friction ? { friction } : {}) } as Anchorage;
  const problems = [
    ...problemsOfFacts(anchorFactsOf({ ...brief, anchorage }), planTent(brief.tent)),
    ...problemsOfFriction(friction ? { coefficient: friction.coefficient, by: friction.by } : null),
  ];
  for (const problem of problems) wrong[fieldOf(own(problem))] ??= ({ figures }) => figures.problem(problem);
  return problems.length > 0 ? { wrong } : { anchorage };
}

/** The screening's names of facts, as an anchorage has them. */
const own = ({ field }: FigureProblem): string =>
  field
    .replace(/^(?:wind|ground)\./, "")
    .replace(/^state$/, "groundState")
    .replace(/^stake\.material$/, "material");
const fieldOf = (path: string): string => (path === "" ? "anchorage" : `anchorage.${path}`);
