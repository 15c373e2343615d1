import type { Formula } from '../core/formula/formula.ts';
import { bookOf, nextVersion, type BookEntry } from '../core/records/book.ts';
import type { Deed, Fact } from '../core/records/fact.ts';
import type { LogRecord } from '../core/records/record.ts';
import type { Settings } from '../../machines/ports.ts';
import type { FormulaFound, House } from '../screens/house.ts';
import { openDrafts } from './book-drafts.ts';
import { loadFormulas } from './formulas.ts';

/** Facts that the Book is made of; no other changes it. */
const KINDS: readonly Fact['kind'][] = ['formula', 'formulaOff', 'start', 'takeBack'];

export interface OpenBook extends Pick<House, 'drafts' | 'keepDraft'> {
  entries(): readonly BookEntry[];
  /** What may be baked: the latest of each that is on the list, and files that could not be read. */
  formulas(): readonly FormulaFound[];
  keep(formula: Formula): Promise<Formula | null>;
  drop(id: string): Promise<void>;
}

/** The Book over the log, folded again only where a fact of its own came. */
export async function openBook(
  records: () => readonly LogRecord[],
  take: (deed: Deed) => Promise<void>,
  settings: Settings,
  keeps: boolean,
): Promise<OpenBook> {
  const [files, drafts] = await Promise.all([loadFormulas(), openDrafts(settings, keeps)]);
  const shipped = files.flatMap(({ formula }) => formula ?? []);
  let folded: readonly LogRecord[] | null = null;
  let ends = '';
  let book: readonly BookEntry[] = [];
  let formulas: readonly FormulaFound[] = [];
  const fold = (): void => {
    const rows = records();
    if (rows === folded) return;
    folded = rows;
    const own = rows.filter(({ fact }) => KINDS.includes(fact.kind));
    const now = `${own.length} ${own.at(-1)?.fact.id}`;
    if (now === ends) return;
    ends = now;
    book = bookOf(own, shipped);
    formulas = [
      ...book.flatMap(({ latest, id, off }) => (off ? [] : [{ formula: latest, file: id }])),
      ...files.filter(({ formula }) => formula === null),
    ];
  };
  const entries = (): readonly BookEntry[] => {
    fold();
    return book;
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
