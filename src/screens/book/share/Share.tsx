import { createSignal, Match, Show, Switch, type JSX } from 'solid-js';
import type { Handed, Sheets } from '../../../../machines/ports.ts';
import type { Formula } from '../../../core/formula/formula.ts';
import { writeFormulas } from '../../../core/sheets/formula-file.ts';
import { writeCsv } from '../../../core/sheets/write-csv.ts';
import { writeSheet } from '../../../core/sheets/write-sheet.ts';
import { share } from '../../../core/speech/words/share.ts';
import { book } from '../../../core/speech/words/book.ts';
import { showBread } from '../../../core/speech/show-bread.ts';
import { Control } from '../../../parts/Control.tsx';
import { Words } from '../../../parts/Words.tsx';
import type { House } from '../../house.ts';
import { BookPage } from '../BookPage.tsx';
import { LinkFace } from './LinkFace.tsx';
import { PrintFace } from './PrintFace.tsx';
import { TakeIn } from './TakeIn.tsx';

/** All flour of a sheet that is handed on, g: a % is ten grams then. */
const FLOUR = 1000;
const XLSX = 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet';

type Face = 'menu' | 'link' | 'print' | 'in';

/** A formula in and out of the program; without one, all of them out, and files in. */
export default function Share(props: {
  readonly house: House;
  readonly formula: Formula | null;
  /** The words on the slab that goes back: where it goes. */
  readonly back: string;
  readonly onBack: () => void;
}): JSX.Element {
  const [face, setFace] = createSignal<Face>('menu');
  const [told, setTold] = createSignal<string | null>(null);
  const toMenu = (): void => void setFace('menu');
  const hand = async (name: string, type: string, text: string | Uint8Array<ArrayBuffer>) => {
    let handed: Handed;
    try {
      handed = await props.house.handOn({ name, type, text });
    } catch {
      setTold(share.failed);
      return;
    }
    setTold(share.handed[handed]);
  };
  const json = (formulas: readonly Formula[], name: string): Promise<void> =>
    hand(`${name}.json`, 'application/json', writeFormulas(formulas));
  const listed = (): readonly Formula[] =>
    props.house.book().flatMap(({ off, latest }) => (off ? [] : [latest]));
  const csv = (formula: Formula): Promise<void> =>
    hand(`${formula.id}.csv`, 'text/csv', writeCsv(writeSheet(formula, FLOUR)));
  const xlsx = async (formula: Formula): Promise<void> => {
    let sheets: Sheets;
    try {
      sheets = await props.house.sheets();
      await hand(`${formula.id}.xlsx`, XLSX, await sheets.xlsx(formula, FLOUR));
    } catch {
      setTold(share.failed);
    }
  };
  return (
    <Switch>
      <Match when={face() === 'menu'}>
        <BookPage
          wide
          back={props.back}
          onBack={() => props.onBack()}
          words={
            <Words
              headline={props.formula ? showBread(props.formula.name) : share.title}
              detail={told() ?? (props.formula ? share.detail : share.detailAll)}
            >
              <div class="book-grid book-top" role="group" aria-label={share.title}>
                <Show
                  when={props.formula}
                  fallback={
                    <>
                      <Control
                        label={share.takeIn}
                        value={share.takeInKind}
                        disabled={!props.house.holds}
                        onPress={() => setFace('in')}
                      />
                      <Control
                        label={share.all}
                        value={share.json}
                        onPress={() => void json(listed(), book.title.toLowerCase())}
                      />
                    </>
                  }
                >
                  {(formula) => (
                    <>
                      <Control
                        label={share.print}
                        value={share.printKind}
                        onPress={() => setFace('print')}
                      />
                      <Control label={share.link} onPress={() => setFace('link')} />
                      <Control
                        label={share.xlsx}
                        value={share.xlsxKind}
                        onPress={() => void xlsx(formula())}
                      />
                      <Control
                        label={share.csv}
                        value={share.csvKind}
                        onPress={() => void csv(formula())}
                      />
                      <Control
                        label={share.file}
                        value={share.json}
                        onPress={() => void json([formula()], formula().id)}
                      />
                    </>
                  )}
                </Show>
              </div>
            </Words>
          }
        />
      </Match>
      <Match when={face() === 'link' && props.formula}>
        {(formula) => <LinkFace house={props.house} formula={formula()} onBack={toMenu} />}
      </Match>
      <Match when={face() === 'print' && props.formula}>
        {(formula) => <PrintFace house={props.house} formula={formula()} onBack={toMenu} />}
      </Match>
      <Match when={face() === 'in'}>
        <TakeIn house={props.house} back={share.title} onBack={toMenu} />
      </Match>
    </Switch>
  );
}
