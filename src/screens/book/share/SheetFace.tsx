import { createSignal, For, Match, Show, Switch, type JSX } from 'solid-js';
import type { Formula } from '../../../core/formula/formula.ts';
import { turnColumn } from '../../../core/sheets/columns.ts';
import { LINE_KINDS, type LineKind } from '../../../core/sheets/line-kind.ts';
import { firstAnswers, readSheet, type SheetAsk } from '../../../core/sheets/read-sheet.ts';
import { namedRows } from '../../../core/sheets/sheet-lines.ts';
import { tableFault, textOf, type Table } from '../../../core/sheets/table.ts';
import { share, shareAsk, shareIn } from '../../../core/speech/words/share.ts';
import { fill } from '../../../core/speech/fill.ts';
import { showBread } from '../../../core/speech/show-bread.ts';
import { Control } from '../../../parts/Control.tsx';
import { Slab } from '../../../parts/Slab.tsx';
import { Tiles, type TileOption } from '../../../parts/Tiles.tsx';
import { Words } from '../../../parts/Words.tsx';
import type { House } from '../../house.ts';
import { BookPage } from '../BookPage.tsx';
import { KeepFace } from './KeepFace.tsx';
import './Share.css';

/** Water for 100 of a levain's flour that a press offers. Common practice, no source. */
const LEVAINS = [50, 60, 80, 100, 125] as const;

/** Letters of a heading that a press has room for. */
const MOST_OF_HEAD = 20;

const optionsOf = (ask: SheetAsk): readonly TileOption[] => {
  if (ask.what === 'sign') {
    return [
      { value: 'point', label: shareAsk.point, means: shareAsk.pointMeans },
      { value: 'comma', label: shareAsk.comma, means: shareAsk.commaMeans },
    ];
  }
  if (ask.what === 'convention') {
    return [
      { value: 'whole', label: shareAsk.whole, means: shareAsk.wholeMeans },
      { value: 'bowl', label: shareAsk.bowl, means: shareAsk.bowlMeans },
    ];
  }
  if (ask.what === 'levainHydration') {
    return LEVAINS.map((pct) => ({ value: String(pct / 100), label: `${pct} %` }));
  }
  return (['shelf', 'hardCheese', 'perishable'] as const).map((value) => ({
    value,
    label: shareAsk[value],
  }));
};

const headlineOf = (ask: SheetAsk): string =>
  ask.what === 'sign'
    ? shareAsk.sign
    : ask.what === 'convention'
      ? shareAsk.convention
      : ask.what === 'keeps'
        ? fill(shareAsk.keeps, { name: ask.name })
        : shareAsk.levain;

const detailOf = (ask: SheetAsk): string | undefined =>
  ask.what === 'sign'
    ? shareAsk.signDetail
    : ask.what === 'keeps'
      ? shareAsk.keepsDetail
      : ask.what === 'levainHydration'
        ? shareAsk.levainMeans
        : undefined;

/** A sheet: what it is taken for, to be mended; then what it leaves open, a question at a time. */
export function SheetFace(props: {
  readonly house: House;
  readonly table: Table;
  readonly own: Formula | null;
  readonly name: string;
  readonly back: string;
  readonly onBack: () => void;
}): JSX.Element {
  /** What it may be baked like: what is on the list, or all where nothing is. */
  const breads = (): readonly Formula[] => {
    const all = props.house.book();
    const listed = all.filter(({ off }) => !off);
    return (listed.length > 0 ? listed : all).map(({ latest }) => latest);
  };
  const [like, setLike] = createSignal(0);
  const base = () =>
    props.own
      ? { formula: props.own, own: true }
      : { formula: breads()[like() % breads().length]!, own: false };
  // eslint-disable-next-line solid/reactivity -- a sheet's guesses are made once
  const [said, setSaid] = createSignal(firstAnswers(props.table, base()));
  // A sheet of ours says what everything is.
  // eslint-disable-next-line solid/reactivity -- it begins with it and goes its own way
  const [at, setAt] = createSignal<'columns' | 'lines' | 'on'>(props.own ? 'on' : 'columns');
  const read = () => readSheet(props.table, said(), base(), props.name);
  const isWrong = (): boolean => at() === 'on' && read().reason !== undefined;
  const why = (): string | null => (isWrong() ? fill(shareIn.why, { ...read().reason! }) : null);
  /** 'B: Gramm': a baker knows a column by its letter and what stands over it. */
  const columnName = (column: number): string => {
    const letter = String.fromCharCode(65 + column);
    const head = textOf(props.table[said().columns.from - 1]?.[column]);
    return head === ''
      ? fill(shareAsk.column, { letter })
      : fill(shareAsk.headed, { letter, head: head.slice(0, MOST_OF_HEAD) });
  };
  const rows = () => (tableFault(props.table) ? [] : namedRows(props.table, said()));
  const turnKind = (row: number, kind: LineKind): void => {
    const at = (LINE_KINDS as readonly LineKind[]).indexOf(kind);
    const next = LINE_KINDS[(at + 1) % LINE_KINDS.length]!;
    setSaid({ ...said(), kinds: { ...said().kinds, [row]: next } });
  };
  const answer = (ask: SheetAsk, value: string): void => {
    const one = said();
    if (ask.what === 'sign') setSaid({ ...one, sign: value === 'point' ? 'point' : 'comma' });
    else if (ask.what === 'convention')
      setSaid({ ...one, convention: value === 'whole' ? 'whole' : 'bowl' });
    else if (ask.what === 'keeps')
      setSaid({ ...one, keeps: { ...one.keeps, [ask.row]: value as 'shelf' } });
    else setSaid({ ...one, levainHydration: Number(value) });
  };
  return (
    <Switch>
      {/* Lines are of the columns: where these name none, they are what is asked again. */}
      <Match when={at() === 'columns' || (isWrong() && rows().length === 0)}>
        <BookPage
          wide
          back={props.back}
          onBack={() => props.onBack()}
          words={
            <Words headline={shareAsk.lookColumns} detail={why() ?? shareAsk.lookDetail}>
              <div
                class="book-grid book-lines share-grid book-top"
                role="group"
                aria-label={shareAsk.columns}
              >
                <For each={said().columns.roles}>
                  {(role, i) => (
                    <Control
                      label={columnName(i())}
                      value={shareAsk.roles[role]}
                      fresh={i()}
                      onPress={() =>
                        setSaid({ ...said(), columns: turnColumn(said().columns, i()) })
                      }
                    />
                  )}
                </For>
              </div>
            </Words>
          }
          slab={
            <Slab
              label={shareAsk.right}
              then={shareAsk.toLines}
              fresh={shareAsk.toLines}
              onPress={() => setAt('lines')}
            />
          }
          controls={
            <>
              <Show when={!props.own}>
                <Control
                  label={shareAsk.like}
                  value={showBread(base().formula.name)}
                  onPress={() => setLike(like() + 1)}
                />
              </Show>
              <Control label={shareIn.no} onPress={() => props.onBack()} />
            </>
          }
        />
      </Match>
      <Match when={at() === 'lines' || isWrong()}>
        <BookPage
          wide
          back={props.back}
          onBack={() => props.onBack()}
          words={
            <Words headline={shareAsk.look} detail={why() ?? shareAsk.lookDetail}>
              <div
                class="book-grid book-lines share-grid share-lines book-top"
                role="group"
                aria-label={shareAsk.lines}
              >
                <For each={rows()}>
                  {({ row, name, kind }) => (
                    <Control
                      label={name}
                      value={shareAsk.kinds[kind]}
                      onPress={() => turnKind(row, kind)}
                    />
                  )}
                </For>
              </div>
            </Words>
          }
          slab={
            <Slab
              label={shareAsk.right}
              then={shareAsk.goOn}
              fresh={shareAsk.right}
              onPress={() => setAt('on')}
            />
          }
          controls={
            <>
              <Control label={shareAsk.toColumns} onPress={() => setAt('columns')} />
              <Control label={shareIn.no} onPress={() => props.onBack()} />
            </>
          }
        />
      </Match>
      <Match when={read().ask}>
        {(ask) => (
          <BookPage
            back={share.title}
            onBack={() => props.onBack()}
            words={
              <Words headline={headlineOf(ask())} detail={detailOf(ask())}>
                <Tiles
                  label={headlineOf(ask())}
                  options={optionsOf(ask())}
                  onChoose={(value) => answer(ask(), value)}
                />
              </Words>
            }
          />
        )}
      </Match>
      <Match when={read().formula}>
        {(formula) => (
          <KeepFace
            house={props.house}
            formulas={[formula()]}
            fromSheet={!props.own}
            back={props.back}
            onBack={() => props.onBack()}
          />
        )}
      </Match>
    </Switch>
  );
}
