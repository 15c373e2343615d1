import type { Kitchen } from '../../../machines/kitchen/kitchen.ts';
import { canHeed, isOfBulk } from '../../core/log/heeded-in.ts';
import { lastNote } from '../../core/log/last-note.ts';
import type { LogRecord } from '../../core/records/record.ts';
import { bulk } from '../../core/speech/words/bulk.ts';
import { sayLastTime, tellChange } from '../../core/speech/tell-last-time.ts';
import type { Focus } from '../focus.ts';
import type { BenchView } from './view.ts';

/** What is usual at the wait for the dough: the sentence behind the look's hour. */
const usual = (): string => bulk['bulk.proving'].detail.split(/(?<=\.) /)[1] ?? '';

/** Whether a bake stands where it began: what the bench shows of it is its first act, of a list its first line. */
const begins = (
  { starts }: Kitchen,
  { bake }: Focus,
  { bake: shown, stage, progress }: BenchView,
): boolean => {
  const { id, start, startedAt, entered } = bake.context;
  const from = starts[start]?.from ?? '';
  // Loaves that are ready to bake begin with their oven.
  const act = from === 'oven.queued' ? 'turnOn' : from;
  return shown === id && stage === act && entered[from] === startedAt && !progress?.done;
};

/** Whether the bulk's first look is what is waited for. */
const firstLook = ({ bake }: Focus, { who, stage }: BenchView): boolean =>
  who === bake.context.id &&
  stage === 'bulk.proving' &&
  bake.context.entered['bulk.look'] === undefined;

/**
 * The bench's view with what the last bake of this formula left: said as the bake begins, and where it is
 * about the end of the bulk once more in the wait for its first look, in place of what is usual there.
 */
export function withLastTime(
  view: BenchView,
  kitchen: Kitchen,
  focus: Focus,
  records: readonly LogRecord[],
): BenchView {
  const first = begins(kitchen, focus, view);
  const looks = firstLook(focus, view);
  if (!first && !looks) return view;
  const note = lastNote(records, focus.bake.context.recipe.formula.id, kitchen.now);
  if (note === null || note.from === 'own') return view;
  const again = looks && isOfBulk(note.change) && view.detail.endsWith(usual());
  const change = tellChange(note);
  const detail = again ? `${view.detail.slice(0, -usual().length)}${change}` : view.detail;
  // A bake that was joined later hears only what it can still heed.
  const from = kitchen.starts[focus.bake.context.start]?.from ?? '';
  if (first && (note.change === null || canHeed(note.change, from)))
    return { ...view, detail, spoken: `${sayLastTime(note)} ${view.spoken}` };
  return again ? { ...view, detail, spoken: `${view.spoken} ${change}` } : view;
}
