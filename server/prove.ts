import type { LiveJob } from "../machines/conversation/live-job.ts";
import { type Hash, hashOf } from "../machines/digest/digest.ts";
import type { JobId } from "../machines/record/entry.ts";
import { readHouse } from "../machines/record/house.ts";
import { type LyingPhoto, photoEntries } from "../machines/record/photos.ts";
import { replayInSteps } from "../machines/record/replay.ts";
import { verifyBeside } from "../machines/record/verify-beside.ts";
import { compareWithHouse, type Kept } from "../machines/record/verify-house.ts";
import { type Line, verifyJob } from "../machines/record/verify-job.ts";
import type { ProofFacts } from "../views/pages/proof/build-state.ts";
import type { Journal } from "./journal/journal.ts";
import { yieldTurn } from "./routes/stream.ts";

/** Commands that are played again before whoever else has something to say is answered: about 10 ms of work. */
const LOT = 8;

/**
 * Verifies a job as it lies in the file now, by what `npm run verify` goes by, and compares it with the house stream. While it
 * does everything else has its turn: a hold does not wait for a reader.
 */
export async function prove(journal: Journal, job: JobId, { entries }: Pick<LiveJob, "entries">): Promise<ProofFacts> {
  const lines = await journal.read(job);
  await playAgain(lines);
  const verdict = verifyJob(job, lines);
  const beside =
    verdict.mismatch === null
      ? verifyBeside(lines, { people: await journal.people(job), photos: await lyingPhotos(journal, job, entries) })
      : null;
  await yieldTurn();
  const house = readHouse(await journal.house.lines());
  return { verdict, beside, house: compareWithHouse(house, keptIn(job, lines), job) };
}

/** What a replay comes to is remembered with its lines: whoever asks for it next need not wait. */
async function playAgain(lines: readonly Line[]): Promise<void> {
  try {
    const replaying = replayInSteps(lines);
    for (let n = 0; !replaying.next().done; n++) if (n < 2 || n % LOT === 0) await yieldTurn();
  } catch {
    // What opens no job is told by the verdict.
  }
}

const keptIn =
  (job: JobId, lines: readonly Line[]): Kept =>
  (asked) =>
    asked === job && lines.length > 0
      ? { entries: lines.at(-1)!.no, hashAt: (no) => (lines[no - 1]?.no === no ? lines[no - 1]!.hash : null) }
      : null;

/** What lies under the hash of each photo that entries name. One at a time: together they are more than memory should hold. */
async function lyingPhotos(journal: Journal, job: JobId, entries: LiveJob["entries"]): Promise<ReadonlyMap<Hash, LyingPhoto>> {
  const lying = new Map<Hash, LyingPhoto>();
  for (const { command } of photoEntries(entries)) {
    const photo = await journal.photos.get(job, command.hash);
    if (photo) lying.set(command.hash, { hash: hashOf(photo.bytes), mime: photo.mime });
    await yieldTurn();
  }
  return lying;
}
