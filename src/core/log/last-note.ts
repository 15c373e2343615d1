import type { Fact } from '../records/fact.ts';
import type { LogRecord } from '../records/record.ts';
import { lastTimeLooked, lastTimeNoted, thisTime } from '../speech/words/last-time.ts';
import type { NoteValue } from '../speech/words/note.ts';
import type { Instant } from '../units.ts';
import { withdrawnIn } from './bake-rows.ts';
import type { LoafCause, LoafChange } from './loaf-names.ts';

/** What the last bake of a formula leaves to the next one. `change` null: to be done the same way. */
export type LastNote =
  | { readonly from: 'cut'; readonly was: LoafCause; readonly change: LoafChange | null }
  | { readonly from: 'note'; readonly was: NoteValue; readonly change: LoafChange | null }
  /** The baker's own words: they are shown, and nothing is made of them. */
  | { readonly from: 'own'; readonly words: string };

/**
 * What each note asks for. Under, over and a crust too dark: as their causes in `loaf-change.ts`; a pale
 * crust usually wants more time. Common practice, no source.
 */
const ASKS: Readonly<Record<NoteValue, LoafChange | null>> = {
  good: null,
  under: 'longerBulk',
  over: 'shorterBulk',
  dark: 'coolerOven',
  pale: 'bakeLonger',
};

type Start = Extract<Fact, { kind: 'start' }>;
type Cut = Extract<Fact, { kind: 'cut' }>;

const has = <T extends object>(words: T, key: unknown): key is keyof T =>
  typeof key === 'string' && Object.hasOwn(words, key);

/** What a cut loaf has to say; null where it gave no ground, or is of a program that knows more. */
function cutNote({ read }: Cut): LastNote | null {
  if (read.says === 'well') return { from: 'cut', was: 'well', change: null };
  const was = read.says === 'causes' ? read.causes?.[0]?.cause : undefined;
  return has(lastTimeLooked, was) && has(thisTime, read.change)
    ? { from: 'cut', was, change: read.change }
    : null;
}

const ownNote = (text: string): LastNote | null => {
  if (has(lastTimeNoted, text)) return { from: 'note', was: text, change: ASKS[text] };
  return text.trim() === '' ? null : { from: 'own', words: text.trim() };
};

/**
 * What is to be said at the next bake of a formula, of whichever version: what its last loaf showed when
 * it was cut, else what was noted as it was put away, else nothing. The last bake is the latest begun
 * that was baked: one that was cleared away early, with no loaf of it cut, has nothing to tell.
 *
 * @param now what is of later is left aside
 * @example
 * lastNote([], 'lane-wheat', 0) // → null
 */
export function lastNote(
  records: readonly LogRecord[],
  formula: string,
  now: Instant,
): LastNote | null {
  const withdrawn = withdrawnIn(records);
  const starts: Start[] = [];
  const running = new Map<string, Start>();
  const texts = new Map<string, string>();
  const cuts = new Map<string, Cut>();
  for (const { fact } of records) {
    if (fact.at > now || withdrawn.has(fact.id)) continue;
    if (fact.kind === 'start') {
      running.set(fact.bake, fact);
      if (fact.recipe.formula.id === formula) starts.push(fact);
    } else if (fact.kind === 'cut') cuts.set(fact.target, fact);
    else if (fact.kind === 'press' && fact.act === 'noted') {
      const start = running.get(fact.who);
      if (start) texts.set(start.id, fact.text ?? '');
    }
  }
  const last = starts.findLast(({ id }) => texts.has(id) || cuts.has(id));
  if (last === undefined) return null;
  const cut = cuts.get(last.id);
  return (cut && cutNote(cut)) ?? ownNote(texts.get(last.id) ?? '');
}
