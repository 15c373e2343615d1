import { createMemo, createSignal, type Accessor } from 'solid-js';
import type { Formula } from '../../core/formula/formula.ts';
import { processWarnings } from '../../core/formula/process-warnings.ts';
import { scaleBy, type Scaled, type ScaleBy } from '../../core/formula/scale-by.ts';
import { freeId, nextVersion, type BookEntry } from '../../core/records/book.ts';
import { bookMore } from '../../core/speech/words/book.ts';
import { fill } from '../../core/speech/fill.ts';
import { tellNotice } from '../../core/speech/tell-notice.ts';
import type { House } from '../house.ts';
import { unusual } from './unusual.ts';

/** As a formula's own piece, so many of them. */
export type Scale = ScaleBy | { readonly by: 'own'; readonly loaves: number };

/** One formula of the Book that is open, as it stands or half changed. */
export interface Editing {
  readonly entry: Accessor<BookEntry | undefined>;
  readonly formula: Accessor<Formula>;
  /** As it was kept last: what it had comes back where a change is turned back. */
  readonly before: Accessor<Formula>;
  /** Something of it was changed and not kept. */
  readonly changed: Accessor<boolean>;
  /** The number it is kept under next. */
  readonly next: Accessor<number>;
  change(formula: Formula): void;
  undo(): void;
  /** True once it is written. */
  keep(): Promise<boolean>;
  /** A copy of it under a name and an id of its own, written at once; its id. */
  copy(): Promise<string | null>;
  readonly scale: Accessor<Scale>;
  setScale(scale: Scale): void;
  readonly scaled: Accessor<Scaled>;
  /** Why it cannot be weighed, or what is unusual about it, in words. */
  readonly warnings: Accessor<readonly string[]>;
  /** What is unusual about its steps alone. */
  readonly stepWarnings: Accessor<readonly string[]>;
}

const USUAL: Scale = { by: 'own', loaves: 2 };

/** @param id of a formula that the Book has */
export function createEditing(house: House, id: Accessor<string>): Editing {
  const [scale, setScale] = createSignal<Scale>(USUAL);
  const entry = createMemo(() => house.book().find((one) => one.id === id()));
  const draft = () => house.drafts()[id()];
  const formula = createMemo(() => draft() ?? entry()!.latest);
  const ask = (of: Scale): ScaleBy =>
    of.by === 'own' ? { by: 'pieces', loaves: of.loaves, piece: formula().piece } : of;
  const scaled = createMemo(
    () =>
      scaleBy(formula(), ask(scale())).scaled ??
      // Its own piece is what every formula that was read has.
      scaleBy(formula(), ask(USUAL)).scaled!,
  );
  const warnings = createMemo(() => {
    const { loaves, piece } = scaled();
    return unusual(formula(), house.ways(), { loaves, piece });
  });
  return {
    entry,
    formula,
    before: () => entry()!.latest,
    changed: () => draft() !== undefined,
    next: () => nextVersion(entry() ?? { versions: [] }),
    change: (next) => house.keepDraft(id(), next),
    undo: () => house.keepDraft(id(), null),
    async keep() {
      const kept = await house.keepFormula(formula());
      if (kept !== null) house.keepDraft(id(), null);
      return kept !== null;
    },
    async copy() {
      const names = new Set(house.book().map(({ latest }) => latest.name));
      const stem = formula().name.replace(/ \d+$/, '').slice(0, 70);
      let n = 2;
      while (names.has(fill(bookMore.copyName, { name: stem, n }))) n += 1;
      const name = fill(bookMore.copyName, { name: stem, n });
      const own = freeId(name, house.book());
      return (await house.keepFormula({ ...formula(), id: own, name }))?.id ?? null;
    },
    scale,
    setScale,
    scaled,
    warnings,
    stepWarnings: () =>
      processWarnings(formula().process).map((notice) => tellNotice(notice, house.ways())),
  };
}
