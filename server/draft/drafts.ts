import type { DraftStep } from "../../views/pages/draft/steps.ts";
import type { Words } from "../../views/text/words.ts";
import { readBrief } from "../input/brief.ts";
import type { Fields } from "../input/form.ts";
import { Problem } from "../input/problem.ts";
import type { Dependencies, LiveJobs } from "../jobs.ts";
import { Changed } from "../journal/catalog.ts";
import { requestDigest } from "../next-entry.ts";
import { createQueues } from "../queues.ts";
import { createTentCatalog, type ListedTent } from "../tent-catalog.ts";
import { isAnotherTent } from "./belongs.ts";
import { firstWrong } from "./check-draft.ts";
import { rowsOf, withoutPerson } from "./crew-rows.ts";
import { bodyOf, type Draft, draftsLeftOff, type OpenedAs, openedAs, readDraft } from "./draft.ts";
import { briefFromDraft } from "./draft-brief.ts";
import type { PartFields } from "./draft-parts.ts";
import { withoutFixes } from "./draft-site.ts";
import { copyOf, sheetDigest, tentDigest, withKeptSheet, withListedTent } from "./fill.ts";
import { keepForNext } from "./keep-for-next.ts";
import { removeOld } from "./remove-old.ts";
import { withTyped } from "./typed-in.ts";

/** The tent that was picked is another by now, or is gone from the list. */
export type Stale = { readonly picked: string; readonly now: ListedTent | null };
/** How opening went: the job, by this press or an earlier one; or why not, and the step where that is seen to. */
export type Opened = { readonly as: OpenedAs; readonly before: boolean } | { readonly step: DraftStep };

/** More than a firm tells at a time: what is left off goes by itself. */
const ALL = 1000;

/** The key with which a draft opens its job. */
const keyOf = (id: string): string => `draft-${id}`;

/** Jobs while they are being told. The one place where a draft is written. */
export function createLiveDrafts({ journal, clock, newId }: Dependencies, liveJobs: LiveJobs) {
  const { drafts, firm } = journal;
  const inTurn = createQueues();
  const now = () => clock().wall;

  /** A draft by its id. Throws a Problem if there is none or it cannot be read. */
  async function get(id: string): Promise<Draft> {
    const saved = await drafts.draft(id);
    if (!saved) throw new Problem(404, (w) => w.draft.noDraft(id));
    return readDraft(saved);
  }

  /** Changes a draft as it stands when it is written. One that has become a job stays as it is. */
  async function change(id: string, to: (draft: Draft) => Draft | Promise<Draft>): Promise<Draft> {
    const draft = await get(id);
    if (draft.opened) return draft;
    const next = await to(draft);
    try {
      const at = now();
      await drafts.save(id, draft.version, { body: bodyOf(next), at, opened: next.opened !== null });
      return { ...next, version: draft.version + 1, at };
    } catch (error) {
      // Another phone was faster: what it typed stays, with this over it.
      if (error instanceof Changed) return change(id, to);
      throw error;
    }
  }

  /**
   * Begins a draft: empty but for the firm's people, or as an earlier job was. `id` comes with the form that asks for it: sent twice,
   * it is the same draft. Where that draft opened a job and is gone since, this is another one: it would open that job again.
   */
  async function begin(id: string, copy: string | null, words: Words): Promise<Draft> {
    const before = await drafts.draft(id);
    if (before) return readDraft(before);
    if (await journal.openedWith(keyOf(id))) return begin(newId(), copy, words);
    await removeOld(journal, now());
    const copied = copy === null ? null : copyOf(await liveJobs.load(copy), words);
    const fields = { ...copied?.fields, ...rowsOf(await firm.people(), copied?.people ?? null) };
    const draft: Draft = { id, version: 1, at: now(), fields, tent: null, opened: null };
    try {
      await drafts.save(id, 0, { body: bodyOf(draft), at: draft.at, opened: false });
      return draft;
    } catch (error) {
      if (error instanceof Changed) return get(id);
      throw error;
    }
  }

  /** Puts a tent of the list into a draft, with the sheet it had on its last job. */
  const pick = async (id: string, tentId: string, words: Words): Promise<Draft> => {
    const tent = await createTentCatalog({ journal, clock, newId }, words).get(tentId);
    const digest = tentDigest(tent);
    const kept = tent.plan && (await firm.sheet(tentId, sheetDigest(tent.plan.spec)));
    return change(id, (draft) => {
      const fields = withListedTent(draft.fields, tent, words);
      // The same tent taken again: its sheet is on the draft, as somebody may have typed it. One that has changed is another.
      const isSame = draft.tent?.id === tentId && !isAnotherTent(draft.fields, fields);
      return {
        ...draft,
        fields: isSame ? fields : withoutFixes(withKeptSheet(fields, kept)),
        tent: { id: tentId, name: tent.name, digest },
      };
    });
  };

  /** Keeps the tent as it was drawn, whatever became of it in the list. */
  const keepDrawn = (id: string): Promise<Draft> => change(id, (draft) => ({ ...draft, tent: null }));

  /** Takes what was typed in a step. A tent with something typed otherwise is no longer the one of the list. */
  const type = (id: string, step: DraftStep, form: Fields): Promise<Draft> =>
    change(id, (draft) => {
      const fields = withTyped(draft.fields, step, form);
      const sameTent = Object.keys({ ...draft.fields, ...fields }).every(
        (name) => !/^tent\./.test(name) || (fields[name] ?? "") === (draft.fields[name] ?? ""),
      );
      return { ...draft, fields: sameTent ? fields : withoutFixes(fields), tent: sameTent ? draft.tent : null };
    });

  /** Keeps parts of its brief that have a page of their own. */
  const keepParts = (id: string, parts: PartFields): Promise<Draft> =>
    change(id, (draft) => ({ ...draft, fields: { ...draft.fields, ...parts } }));

  /** What became of the tent that was picked; `null` where it is as it was then, or none was. */
  async function stale({ tent }: Draft, words: Words): Promise<Stale | null> {
    if (!tent) return null;
    const is = await createTentCatalog({ journal, clock, newId }, words).find(tent.id);
    return is && tentDigest(is) === tent.digest ? null : { picked: tent.name, now: is };
  }

  /** Opens the job, once, however many press. */
  const open = (id: string, device: string, words: Words): Promise<Opened> =>
    inTurn(id, async () => {
      const draft = await get(id);
      if (draft.opened) return { as: draft.opened, before: true };
      const { fields } = draft;
      const step = (await stale(draft, words)) ? "tent" : firstWrong(fields, now(), words);
      if (step) return { step };
      const parsed = readBrief(briefFromDraft(fields, now(), words));
      const job = await liveJobs.open(parsed, keyOf(id), requestDigest({ draft: id }));
      const as: OpenedAs = { job, device, at: now() };
      await change(id, (standing) => openedAs(standing, as));
      await keepForNext(firm, parsed, draft.tent, now());
      return { as, before: false };
    });

  /** Throws a draft away, as it was shown. Gives `false` where it is another by now, or a job. */
  const throwAway = (id: string, version: number): Promise<boolean> =>
    inTurn(id, async () => {
      if ((await get(id)).opened) return false;
      try {
        await drafts.remove(id, version);
        return true;
      } catch (error) {
        if (error instanceof Changed) return false;
        throw error;
      }
    });

  /** Takes somebody off the firm's list, and off every draft on which they are not ticked. */
  async function forget(name: string): Promise<void> {
    await firm.forget(name);
    const without = (draft: Draft): Draft => ({ ...draft, fields: withoutPerson(draft.fields, name) });
    const names = (draft: Draft) => Object.keys(draft.fields).length > Object.keys(without(draft).fields).length;
    for (const { id } of (await all()).filter(names)) await change(id, without);
  }

  /** Those that have become no job yet, newest first. */
  const all = () => draftsLeftOff(drafts, ALL);

  return { get, all, begin, pick, keepDrawn, type, keepParts, stale, open, throwAway, forget, now };
}
export type LiveDrafts = ReturnType<typeof createLiveDrafts>;
