import { type Context, Hono } from "hono";
import type { LiveJob } from "../../machines/conversation/live-job.ts";
import { shownLetters } from "../../machines/digest/letters.ts";
import { DIGEST_LETTERS } from "../../machines/digest/short-digest.ts";
import { type Compared, comparison } from "../../machines/record/compare-digest.ts";
import { lookupIn } from "../../machines/record/entries.ts";
import { type House, readHouse } from "../../machines/record/house.ts";
import { buildProofState } from "../../views/pages/proof/build-state.ts";
import { type CheckedDigest, CheckPage } from "../../views/pages/proof/check.tsx";
import { ProofPage } from "../../views/pages/proof/view.tsx";
import { hurtState } from "../../views/parts/hurt-state.ts";
import type { Words } from "../../views/text/words.ts";
import type { Dependencies, LiveJobs } from "../jobs.ts";
import { prove } from "../prove.ts";
import { vouched } from "../vouched.ts";
import { page } from "./page.ts";

/** What proves the record of a job, in plain words and as data; and a digest off paper held against it. */
export function proofRoutes(liveJobs: LiveJobs, { journal }: Dependencies) {
  const app = new Hono();
  const proofOf = async (c: Context) => {
    const id = c.req.param("id")!;
    const live = await vouched(liveJobs, journal, id);
    return { live, state: buildProofState(live, await prove(journal, id, live), c.get("words")) };
  };

  app.get("/jobs/:id{[\\w-]+}/proof", async (c) => {
    const { live, state } = await proofOf(c);
    const words = c.get("words");
    return c.html(page(c, <ProofPage state={state} hurt={hurtState(live, words)} words={words} />));
  });
  app.get("/jobs/:id{[\\w-]+}/proof.json", async (c) => c.json((await proofOf(c)).state));

  app.get("/jobs/:id{[\\w-]+}/check", async (c) => {
    const id = c.req.param("id");
    const live = await vouched(liveJobs, journal, id);
    const words = c.get("words");
    const typed = c.req.query("digest");
    const last = live.entries.at(-1)!;
    const checked = typed === undefined ? null : checkedDigest(live, readHouse(await journal.house.lines()), typed, words);
    const job = { id, title: live.job.frozen.brief.title };
    const record = { no: last.entry.no, hash: last.hash };
    return c.html(page(c, <CheckPage job={job} record={record} checked={checked} hurt={hurtState(live, words)} words={words} />));
  });
  return app;
}

/** What a digest comes to in a record, as far as that holds, and in the house stream. */
function checkedDigest(live: LiveJob, house: House, typed: string, words: Words): CheckedDigest {
  const compared = comparison(typed);
  const hashes = [...live.entries].map(({ hash }) => hash);
  compared.job({ title: live.job.frozen.brief.title, hashes, entries: hashes.length });
  compared.house(house.entries);
  const found = compared.found()!;
  const told = toldOf(found, { live, house, words });
  const { proof } = words;
  return {
    typed: typed.slice(0, 60),
    same: found.is === "same",
    told: live.readOnly && live.readOnly.why !== "lost" ? [...told, proof.notWhole(hashes.length)] : told,
  };
}

type Looked = { readonly live: LiveJob; readonly house: House; readonly words: Words };

function toldOf(found: Compared, { live, house, words: { proof, when } }: Looked): string[] {
  switch (found.is) {
    case "same": {
      const { stands } = found;
      if (stands.of === "house") return [proof.sameHouse(stands.day), ofJobThen(live, house, stands.no, proof)];
      const { wall } = lookupIn(live.entries)(stands.no)!;
      return [proof.same(stands.no, when.second(live.job.frozen.brief.zone, wall)), proof.since(live.entries.length - stands.no)];
    }
    case "near":
      return [proof.near(shownLetters(found.digest), found.off)];
    case "none":
      return [proof.none];
    case "unreadable": {
      const { strange, letters } = found.typed;
      return [strange.length > 0 ? proof.strange(strange) : proof.wrongLength(letters.length, DIGEST_LETTERS)];
    }
  }
}

/** Whether a job still is as the house stream had it by one of its entries: by the last that it said of it up to there. */
function ofJobThen({ entries }: LiveJob, house: House, upTo: number, proof: Words["proof"]): string {
  const { job } = entries.at(0)!.entry;
  const said = house.entries
    .slice(0, upTo)
    .flatMap(({ entry: { day, tips } }) => tips.filter((tip) => tip.job === job).map(({ no, hash }) => ({ no, hash, day })))
    .at(-1);
  if (!said) return proof.sameHouseNotJob;
  const there = said.no <= entries.length ? entries.at(said.no - 1) : undefined;
  if (there?.hash === said.hash) return proof.sameHouseJob(said);
  const is = there ? "rewritten" : "cutOff";
  return proof.houseProblem({ is, job, said, has: entries.length, agrees: null });
}
