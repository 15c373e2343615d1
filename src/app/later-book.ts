import { createSignal } from 'solid-js';
import type { House } from '../screens/house.ts';
import type { OpenBook, openBook } from './book.ts';

/** The Book comes right after the first paint: nobody has chosen a bread before it. */
export function laterBook(
  ...parts: Parameters<typeof openBook>
): Pick<House, 'formulas' | 'book' | 'keepFormula' | 'dropFormula' | 'drafts' | 'keepDraft'> {
  const [book, setBook] = createSignal<OpenBook | null>(null);
  const coming = import('./book.ts').then(async (its) => {
    const opened = await its.openBook(...parts);
    setBook(() => opened);
    return opened;
  });
  return {
    formulas: () => book()?.formulas() ?? [],
    book: () => book()?.entries() ?? [],
    keepFormula: async (formula) => (await coming).keep(formula),
    drafts: () => book()?.drafts() ?? {},
    keepDraft: (...draft) => book()?.keepDraft(...draft),
    dropFormula: async (id) => (await coming).drop(id),
  };
}
