import type { Formula } from '../core/formula/formula.ts';
import { bookOf, nextVersion, type BookEntry } from '../core/records/book.ts';
import type { Deed, Fact } from '../core/records/fact.ts';
import type { LogRecord } from '../core/records/record.ts';
import { book } from '../core/speech/en/book.ts';
import type { Settings } from '../../machines/ports.ts';
import type { FormulaFound, House } from '../screens/house.ts';
import { openDrafts } from './book-drafts.ts';
import { loadFormulas } from './formulas.ts';
import type { World } from './world.ts';

/** Facts that the Book is made of; no other changes it. */
const KINDS: readonly Fact['kind'][] = ['formula', 'formulaOff', 'start', 'takeBack'];

export interface OpenBook extends Pick<House, 'drafts' | 'keepDraft'> {
  entries(): readonly BookEntry[];
  /** What may be baked: the latest of each that is on the list, and files that could not be read. */
  formulas(): readonly FormulaFound[];
  keep(formula: Formula): Promise<Formula | null>;
  drop(id: string): Promise<void>;
}

const isOwn = ({ fact }: LogRecord): boolean => KINDS.includes(fact.kind);

/** Said among the breads: the program's own are there all the same. */
const UNREAD: FormulaFound = {
  formula: null,
  file: book.title,
  reason: { key: 'lentUnread', values: {} },
};

/**
 * The Book over the log, folded again only where a fact of its own came.
 *
 * @param lent what a rehearsal has from the real log, under its own; null in earnest
 */
export async function openBook(
  records: () => readonly LogRecord[],
  take: (deed: Deed) => Promise<void>,
  settings: Settings,
  keeps: boolean,
  lent: World['lent'],
): Promise<OpenBook> {
  const [files, drafts, rows] = await Promise.all([
    loadFormulas(),
    openDrafts(settings, keeps),
    lent === null ? [] : lent().catch(() => null),
  ]);
  const under = (rows ?? []).filter(isOwn);
  const shipped = files.flatMap(({ formula }) => formula ?? []);
  let folded: readonly LogRecord[] | null = null;
  let ends = '';
  let entriesNow: readonly BookEntry[] = [];
  let formulas: readonly FormulaFound[] = [];
  const fold = (): void => {
    const now = records();
    if (now === folded) return;
    folded = now;
    const own = now.filter(isOwn);
    const end = `${own.length} ${own.at(-1)?.fact.id}`;
    if (end === ends) return;
    ends = end;
    entriesNow = bookOf([...under, ...own], shipped);
    formulas = [
      ...entriesNow.flatMap(({ latest, id, off }) => (off ? [] : [{ formula: latest, file: id }])),
      ...files.filter(({ formula }) => formula === null),
      ...(rows === null ? [UNREAD] : []),
    ];
  };
  const entries = (): readonly BookEntry[] => {
    fold();
    return entriesNow;
  };
  const entryOf = (id: string) => entries().find((entry) => entry.id === id);
  return {
    ...drafts,
    entries,
    formulas() {
      fold();
      return formulas;
    },
    async keep(formula) {
      const entry = entryOf(formula.id);
      const version = entry ? nextVersion(entry) : 1;
      await take({ kind: 'formula', formula: { ...formula, version } });
      const kept = entryOf(formula.id)?.latest;
      return kept?.version === version ? kept : null;
    },
    drop: (id) => take({ kind: 'formulaOff', formula: id }),
  };
}
