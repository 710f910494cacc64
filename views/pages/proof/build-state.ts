import type { LiveJob } from "../../../machines/conversation/live-job.ts";
import { commitmentsIn } from "../../../machines/record/people.ts";
import { photoEntries } from "../../../machines/record/photos.ts";
import type { BesideProblem, BesideVerdict } from "../../../machines/record/verify-beside.ts";
import type { HouseVerdict } from "../../../machines/record/verify-house.ts";
import type { Verdict } from "../../../machines/record/verify-job.ts";
import type { Words } from "../../text/words.ts";
import type { Check, CheckIs, CheckName, ProofState } from "./state.ts";

/** What came of verifying a job as it lies in the file, and of comparing it with the house stream. */
export type ProofFacts = { readonly verdict: Verdict; readonly beside: BesideVerdict | null; readonly house: HouseVerdict };

type Told = ProofFacts & { readonly live: LiveJob; readonly words: Words };
type Outcome = Omit<Check, "name">;

export function buildProofState(live: LiveJob, facts: ProofFacts, words: Words): ProofState {
  const { brief } = live.job.frozen;
  const told: Told = { ...facts, live, words };
  const checks = Object.entries(CHECKS).map(([name, look]): Check => ({ name: name as CheckName, ...look(told) }));
  const problem = live.readOnly?.why === "lost" ? words.notRecordedText(live.readOnly) : null;
  const last = live.entries.at(-1)!;
  return {
    job: last.entry.job,
    title: brief.title,
    rehearsal: brief.rehearsal === true,
    holds: problem === null && checks.every(({ is }) => is === "holds" || is === "none"),
    entries: facts.verdict.entries,
    problem,
    checks,
    cannot: cannotShow(told),
    digests: {
      record: { no: last.entry.no, hash: last.hash },
      house: facts.house.last && { day: facts.house.last.day, hash: facts.house.last.hash },
    },
  };
}

/** The checks of a chain, in the order in which an entry fails them. */
const CHAIN = [
  ["hash", ["hash", "notJson"]],
  ["chain", ["prev", "gap", "job", "filed"]],
  ["replay", ["replay", "opening"]],
] as const satisfies readonly (readonly [CheckName, readonly NonNullable<Verdict["mismatch"]>["why"][]])[];

function ofChain(name: (typeof CHAIN)[number][0], { verdict: { entries, mismatch }, words: { proof } }: Told): Outcome {
  if (mismatch === null) return outcome("holds", proof.upTo(entries));
  const found = CHAIN.find(([check]) => check === name)!;
  if ((found[1] as readonly string[]).includes(mismatch.why)) return outcome("broken", proof.brokenAt(mismatch.no, mismatch.why));
  return mismatch.no === 1 ? outcome("unchecked", proof.notReached) : outcome("holds", proof.upTo(mismatch.no - 1));
}

function ofNames({ beside, live, words: { proof } }: Told): Outcome {
  if (beside === null) return outcome("unchecked", proof.notReached);
  const problems = beside.problems.flatMap((problem) => nameTold(problem, proof) ?? []);
  if (problems.length > 0) return outcome("broken", ...problems);
  const known = Object.keys(commitmentsIn(live.entries)).length;
  if (known === 0) return outcome("none", proof.noNames);
  return outcome("holds", proof.allNames(known - beside.erased), ...(beside.erased > 0 ? [proof.erased(beside.erased)] : []));
}
function nameTold(problem: BesideProblem, { nameChanged, stranger }: Words["proof"]): string | null {
  if (problem.is === "nameChanged") return nameChanged(problem.person);
  return problem.is === "stranger" ? stranger(problem.person) : null;
}

function ofPhotos({ beside, live, words: { proof } }: Told): Outcome {
  const taken = photoEntries(live.entries).length;
  if (taken === 0) return outcome("none", proof.noPhotos);
  if (beside === null) return outcome("unchecked", proof.notReached);
  const problems = beside.problems.flatMap((problem) => photoTold(problem, proof) ?? []);
  return problems.length > 0 ? outcome("broken", ...problems) : outcome("holds", proof.allPhotos(taken));
}
function photoTold(problem: BesideProblem, { photoMissing, photoChanged }: Words["proof"]): string | null {
  if (problem.is === "photoMissing") return photoMissing(problem.no);
  return problem.is === "photoChanged" ? photoChanged(problem.no) : null;
}

function ofHouse({ house: { broken, entries, last }, words: { proof } }: Told): Outcome {
  if (broken) return outcome("broken", proof.houseBroken(broken.no, broken.why));
  return last ? outcome("holds", proof.houseEntries(entries, last.day)) : outcome("none", proof.noHouse);
}

function ofHouseJob({ house: { agrees, problems, last }, live, words: { proof } }: Told): Outcome {
  const [problem] = problems;
  if (problem) return outcome("broken", proof.houseProblem(problem));
  if (!last) return outcome("none", proof.noHouse);
  const said = agrees.get(live.entries.at(-1)!.entry.job);
  return said ? outcome("holds", proof.houseAgrees(said)) : outcome("none", proof.houseNotYet);
}

const outcome = (is: CheckIs, ...told: readonly string[]): Outcome => ({ is, told });

const CHECKS: Readonly<Record<CheckName, (told: Told) => Outcome>> = {
  hash: (told) => ofChain("hash", told),
  chain: (told) => ofChain("chain", told),
  replay: (told) => ofChain("replay", told),
  names: ofNames,
  photos: ofPhotos,
  house: ofHouse,
  houseJob: ofHouseJob,
};

function cannotShow({ house, live, words: { proof } }: Told): string[] {
  const { job, no } = live.entries.at(-1)!.entry;
  const said = house.agrees.get(job);
  // An end of which the house stream says that it is missing is shown.
  const end = house.problems.length > 0 ? [] : [said ? proof.noEnd(said, no) : proof.noEndAtAll(no)];
  return [...end, proof.onlyPaper, proof.notTrue, proof.notClock];
}
