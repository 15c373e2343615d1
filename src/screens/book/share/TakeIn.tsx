import { createSignal, Match, Switch, type JSX } from 'solid-js';
import type { Formula } from '../../../core/formula/formula.ts';
import type { Misread } from '../../../core/formula/read-fields.ts';
import type { Table } from '../../../core/sheets/table.ts';
import { share, shareIn } from '../../../core/speech/words/share.ts';
import { fill } from '../../../core/speech/fill.ts';
import { Control } from '../../../parts/Control.tsx';
import { Words } from '../../../parts/Words.tsx';
import type { House } from '../../house.ts';
import { BookPage } from '../BookPage.tsx';
import { KeepFace } from './KeepFace.tsx';
import { SheetFace } from './SheetFace.tsx';

/** What was chosen: formulas to be kept, a sheet with open questions, or why it is neither. */
type Found =
  | { readonly kind: 'formulas'; readonly formulas: readonly Formula[] }
  | {
      readonly kind: 'sheet';
      readonly table: Table;
      readonly own: Formula | null;
      readonly name: string;
    }
  | { readonly kind: 'none'; readonly reason: Misread };

/** A file chosen, looked into, asked about where it leaves something open, and kept by a press. */
export function TakeIn(props: {
  readonly house: House;
  readonly back: string;
  readonly onBack: () => void;
}): JSX.Element {
  const [found, setFound] = createSignal<Found | null>(null);
  let input!: HTMLInputElement;
  const read = async (): Promise<void> => {
    const [chosen] = input.files ?? [];
    if (!chosen) return;
    const name =
      chosen.name
        .replace(/\.[^.]*$/, '')
        .slice(0, 80)
        .trim() || share.file;
    try {
      const sheets = await props.house.sheets();
      // Nothing is read of what is too large to be looked into.
      const bytes = new Uint8Array(await chosen.slice(0, 2_000_001).arrayBuffer());
      setFound({ ...(await sheets.read(bytes)), name });
    } catch {
      props.house.tell({ id: 'share', text: share.failed, action: null });
    }
    input.value = '';
  };
  const choose = (
    <input
      ref={input}
      type="file"
      hidden
      accept=".json,.csv,.txt,.xlsx"
      aria-label={share.takeIn}
      onChange={() => void read()}
    />
  );
  const of = <K extends Found['kind']>(kind: K) => {
    const one = found();
    return one?.kind === kind ? (one as Extract<Found, { kind: K }>) : null;
  };
  return (
    <>
      {choose}
      <Switch
        fallback={
          <BookPage
            back={props.back}
            onBack={() => props.onBack()}
            words={
              <Words
                headline={of('none') ? shareIn.refused : share.takeIn}
                detail={of('none') ? fill(shareIn.why, { ...of('none')!.reason }) : share.detailAll}
              />
            }
            controls={
              <Control
                label={share.takeIn}
                value={share.takeInKind}
                onPress={() => input.click()}
              />
            }
          />
        }
      >
        <Match when={of('formulas')}>
          {(good) => (
            <KeepFace
              house={props.house}
              formulas={good().formulas}
              back={props.back}
              onBack={() => props.onBack()}
            />
          )}
        </Match>
        <Match when={of('sheet')} keyed>
          {(sheet) => (
            <SheetFace
              house={props.house}
              table={sheet.table}
              own={sheet.own}
              name={sheet.name}
              back={props.back}
              onBack={() => props.onBack()}
            />
          )}
        </Match>
      </Switch>
    </>
  );
}
