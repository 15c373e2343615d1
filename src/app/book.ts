import { createSignal } from 'solid-js';
import type { Formula } from '../core/formula/formula.ts';
import { bookOf, nextVersion, type BookEntry } from '../core/records/book.ts';
import type { Deed, Fact } from '../core/records/fact.ts';
import { formulasBeside } from '../core/records/formulas-beside.ts';
import type { Log } from '../core/records/merge-logs.ts';
import type { LogRecord } from '../core/records/record.ts';
import { book } from '../core/speech/words/book.ts';
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
const unread = (): FormulaFound => ({
  formula: null,
  file: book.title,
  reason: { key: 'lentUnread', values: {} },
});

/** Nobody looks for another tablet's breads while the page comes up, ms. Judgement. */
const AFTER = 1_500;

/** Of other tablets' logs, once they are read, what a Book is made of. Where they cannot be, there is none. */
function readBeside({
  otherLogs,
  later,
}: Pick<World, 'otherLogs' | 'later'>): () => readonly Log[] {
  const [logs, setLogs] = createSignal<readonly Log[]>([]);
  later(AFTER, () => {
    Promise.all([import('./read-others.ts'), otherLogs().then((its) => its.load())]).then(
      ([its, rows]) => {
        if (rows.size > 0)
          setLogs([...its.readOtherLogs(rows).logs.values()].map((log) => log.filter(isOwn)));
      },
      () => undefined,
    );
  });
  return logs;
}

/**
 * The Book over the log and what formulas only other tablets have, folded again only where a fact of its own
 * came. A rehearsal has those of the real log (`lent`) under its own.
 */
export async function openBook(
  records: () => readonly LogRecord[],
  take: (deed: Deed) => Promise<void>,
  settings: Settings,
  keeps: boolean,
  world: Pick<World, 'lent' | 'otherLogs' | 'later'>,
): Promise<OpenBook> {
  const [files, drafts, rows] = await Promise.all([
    loadFormulas(),
    openDrafts(settings, keeps),
    world.lent === null ? [] : world.lent().catch(() => null),
  ]);
  const under = (rows ?? []).filter(isOwn);
  const shipped = files.flatMap(({ formula }) => formula ?? []);
  const shippedIds = new Set(shipped.map(({ id }) => id));
  const others = readBeside(world);
  let folded: readonly LogRecord[] | null = null;
  let foldedOthers: readonly Log[] | null = null;
  let ends = '';
  let entriesNow: readonly BookEntry[] = [];
  let formulas: readonly FormulaFound[] = [];
  const fold = (): void => {
    const now = records();
    const logs = others();
    if (now === folded && logs === foldedOthers) return;
    const own = now.filter(isOwn);
    const end = `${own.length} ${own.at(-1)?.fact.id}`;
    const same = end === ends && logs === foldedOthers;
    [folded, foldedOthers, ends] = [now, logs, end];
    if (same) return;
    const beside = formulasBeside(logs, own, shippedIds);
    entriesNow = bookOf([...under, ...beside, ...own], shipped);
    formulas = [
      ...entriesNow.flatMap(({ latest, id, off }) => (off ? [] : [{ formula: latest, file: id }])),
      ...files.filter(({ formula }) => formula === null),
      ...(rows === null ? [unread()] : []),
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
