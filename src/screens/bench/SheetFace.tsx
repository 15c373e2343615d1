import { createMemo, For, type JSX } from 'solid-js';
import { sheetRows } from '../../core/formula/sheet-rows.ts';
import { controls } from '../../core/speech/words/controls.ts';
import { sheet } from '../../core/speech/words/sheet.ts';
import { fill } from '../../core/speech/fill.ts';
import { Control } from '../../parts/Control.tsx';
import { Sheet } from '../../parts/Sheet.tsx';
import { markOf, SheetGrid } from '../../parts/SheetGrid.tsx';
import { unbroken } from '../../parts/unbroken.ts';
import type { House } from '../house.ts';
import { cellWords } from './cell-words.ts';
import './SheetFace.css';

/** The lamination's sheet: a cell a loaf, each with its share of every filling, drawn and in words. */
export default function SheetFace(props: {
  readonly house: House;
  readonly bake: string;
  readonly onClose: () => void;
}): JSX.Element {
  const bake = () => props.house.kitchen().bakes[props.bake]?.context;
  const count = (): number => bake()?.loaves.length ?? 1;
  const fillings = createMemo(() =>
    cellWords(bake()?.recipe.lines.filling ?? [], count(), props.house.ways()),
  );
  const words = (): readonly string[] => fillings().map(({ told }) => told);
  return (
    <Sheet title={sheet.title}>
      <div class="sheet-face">
        <SheetGrid
          rows={sheetRows(count())}
          cells={Array.from({ length: count() }, (_, i) =>
            fillings().map(({ cells }) => cells[i] ?? ''),
          )}
          edge={sheet.edge}
          alt={fill(sheet.alt, { count: count(), name: words().join(', ') })}
        />
        <div class="sheet-words">
          <p>{count() === 1 ? sheet.one : fill(sheet.each, { count: count() })}</p>
          <ul>
            <For each={words()}>
              {(text, i) => (
                <li>
                  <svg viewBox="0 0 1 1" aria-hidden="true">
                    <path d={markOf(i())} fill="currentColor" />
                  </svg>
                  <span>{unbroken(text)}</span>
                </li>
              )}
            </For>
          </ul>
          <Control label={controls.backToBench} onPress={() => props.onClose()} />
        </div>
      </div>
    </Sheet>
  );
}
