import type { LiveJob } from "../../machines/conversation/live-job.ts";

/** So many screens that are alike are remembered, over all jobs. */
const MAX_KEPT = 500;
/** Stands for a key of a form until a screen has its own; of private use, and in no words of ours. */
const MARK = "\ue004";
const MARKED = new RegExp(`${MARK}(\\d+)${MARK}`, "g");

type Kept = { readonly stands: string; readonly html: Promise<string> };

/**
 * What screens of a job show that are alike, made once for each change: of 200 screens in the hands of seven people seven are
 * made. Each gets forms with keys of its own.
 */
export function createSharedScreens(newId: () => string) {
  const kept = new Map<string, Kept>();

  /** `alike` names all that a screen's HTML is made from besides the job as it stands. */
  return async function shown(live: LiveJob, alike: string, render: (newKey: () => string) => Promise<string>): Promise<string> {
    const name = `${live.entries.at(0)!.entry.job} ${alike}`;
    const stands = howItStands(live);
    const known = kept.get(name);
    const html = known?.stands === stands ? known.html : made(render);
    kept.delete(name);
    kept.set(name, { stands, html });
    if (kept.size > MAX_KEPT) kept.delete(kept.keys().next().value!);
    const own = newId();
    return (await html).replaceAll(MARKED, (_, n) => `${own}-${n}`);
  };
}

function made(render: (newKey: () => string) => Promise<string>): Promise<string> {
  let keys = 0;
  return render(() => `${MARK}${++keys}${MARK}`);
}

/** Whatever changes what is shown: the record, what could not be recorded, the store, and each second of an age that is told. */
const howItStands = ({ entries, names, unrecorded, readOnly, warning, jump, now }: LiveJob): string =>
  JSON.stringify([entries.length, names, unrecorded, readOnly, warning, jump, Math.floor(now.at / 1000)]);
