import { For, Show, type JSX } from 'solid-js';
import type { Formula } from '../../core/formula/formula.ts';
import { bench } from '../../core/speech/words/bench.ts';
import { askPage } from '../../core/speech/words/day.ts';
import { start } from '../../core/speech/words/start.ts';
import { shown } from '../../core/speech/facts.ts';
import { fill } from '../../core/speech/fill.ts';
import { showHeat } from '../../core/speech/heats.ts';
import { showBread } from '../../core/speech/show-bread.ts';
import { showWeight } from '../../core/speech/weights.ts';
import { Control } from '../../parts/Control.tsx';
import { Slab } from '../../parts/Slab.tsx';
import { Tiles } from '../../parts/Tiles.tsx';
import { Words } from '../../parts/Words.tsx';
import type { BakeDraft, DayDraft } from '../day-draft.ts';
import type { House } from '../house.ts';
import { LoavesFace } from '../LoavesFace.tsx';
import { AsksPage } from './AsksPage.tsx';
import { dayAndHour } from './day-hours.ts';
import { DayPage } from './DayPage.tsx';
import { formulaOf, namesOf } from './draft.ts';

/** Pages that ask for one thing of one bread, or of the day. */
export type AskPage = 'bread' | 'loaves' | 'due' | 'warm' | 'away' | 'bake';

export const dueWords = (house: House, { due }: BakeDraft): string =>
  due === null ? '–' : due === 'now' ? askPage.startNow : dayAndHour(house, due);

/** How many, and of how much dough each where that is not the formula's own. */
const sizeWords = (house: House, { loaves, piece }: BakeDraft): string =>
  piece === undefined
    ? String(loaves)
    : fill(askPage.sized, { count: loaves, grams: showWeight(piece, house.ways()) });

const bakeWords = (house: House, name: string, { loaves, piece }: BakeDraft): string =>
  piece === undefined
    ? fill(askPage.bake, { name, ...shown({ loaves }) })
    : fill(askPage.bakeSized, { name, count: loaves, grams: showWeight(piece, house.ways()) });

const NAMED = 3;

interface AskProps {
  readonly house: House;
  readonly draft: DayDraft;
  readonly formulas: readonly Formula[];
  readonly onTurn: (page: AskPage, at: number) => void;
}

/** What one bread is asked with. */
function BakeCells(props: AskProps & { readonly at: number }): JSX.Element {
  const bake = () => props.draft.bakes[props.at]!;
  const bread = (): string => {
    const formula = formulaOf(bake(), props.formulas);
    return formula ? showBread(formula.name) : start.noFormulas;
  };
  const cell = (label: string, value: string, page: AskPage): JSX.Element => (
    <Control label={label} value={value} onPress={() => props.onTurn(page, props.at)} />
  );
  return (
    <>
      {cell(start.formula, bread(), 'bread')}
      {cell(start.loaves, sizeWords(props.house, bake()), 'loaves')}
      {cell(askPage.due, dueWords(props.house, bake()), 'due')}
    </>
  );
}

/** The day as it is asked: its bread or breads, how warm it is, and on to a plan. */
export function AskFace(
  props: AskProps & {
    /** What is missing; null where it can be asked. */
    readonly missing: string | null;
    readonly onAdd: () => void;
    readonly onPlan: () => void;
    /** What it goes back to. */
    readonly home: string;
    readonly onHome: () => void;
  },
): JSX.Element {
  const names = () => namesOf(props.draft, props.formulas);
  const warmth = (): string => {
    const { kitchen } = props.draft;
    return kitchen === null ? '–' : showHeat(kitchen, props.house.ways());
  };
  return (
    <DayPage
      caption={props.house.caption()}
      words={
        <Words headline={askPage.title}>
          <div class="day-grid">
            <Show
              when={props.draft.bakes.length > 1}
              fallback={
                <BakeCells
                  house={props.house}
                  draft={props.draft}
                  formulas={props.formulas}
                  at={0}
                  onTurn={(page, at) => props.onTurn(page, at)}
                />
              }
            >
              <For each={props.draft.bakes}>
                {(bake, at) => (
                  <Control
                    label={bakeWords(props.house, showBread(names()[at()]!), bake)}
                    value={dueWords(props.house, bake)}
                    onPress={() => props.onTurn('bake', at())}
                  />
                )}
              </For>
            </Show>
            <Control
              label={start.kitchen}
              value={warmth()}
              onPress={() => props.onTurn('warm', 0)}
            />
          </div>
        </Words>
      }
      slab={
        <Slab
          label={askPage.slab}
          then={props.missing ?? askPage.then}
          fresh="ask"
          disabled={props.missing !== null || !props.house.holds}
          onPress={() => props.onPlan()}
        />
      }
      controls={
        <>
          <Show when={props.draft.bakes.length < NAMED}>
            <Control label={askPage.bread} onPress={() => props.onAdd()} />
          </Show>
          <Control label={askPage.away} onPress={() => props.onTurn('away', 0)} />
          <Control label={props.home} onPress={() => props.onHome()} />
        </>
      }
    />
  );
}

/** One of several breads. */
export function BakeFace(
  props: AskProps & {
    readonly at: number;
    readonly onOff: () => void;
    readonly onBack: () => void;
  },
): JSX.Element {
  return (
    <AsksPage
      house={props.house}
      headline={showBread(namesOf(props.draft, props.formulas)[props.at] ?? '')}
      back={askPage.title}
      fresh="bake"
      controls={<Control label={askPage.off} onPress={() => props.onOff()} />}
      onBack={() => props.onBack()}
    >
      <div class="day-grid">
        <BakeCells
          house={props.house}
          draft={props.draft}
          formulas={props.formulas}
          at={props.at}
          onTurn={(page, at) => props.onTurn(page, at)}
        />
      </div>
    </AsksPage>
  );
}

export function BreadFace(props: {
  readonly house: House;
  readonly formulas: readonly Formula[];
  readonly onPick: (formula: string) => void;
  readonly onBack: () => void;
}): JSX.Element {
  return (
    <AsksPage
      house={props.house}
      headline={start.formula}
      back={askPage.title}
      onBack={() => props.onBack()}
    >
      <Tiles
        label={start.formula}
        options={props.formulas.map(({ id, name }) => ({ value: id, label: showBread(name) }))}
        onChoose={(id) => props.onPick(id)}
      />
    </AsksPage>
  );
}

export function LoavesPage(props: {
  readonly house: House;
  readonly loaves: number;
  readonly onChange: (loaves: number) => void;
  readonly onBack: () => void;
}): JSX.Element {
  return (
    <DayPage
      caption={props.house.caption()}
      words={<LoavesFace loaves={props.loaves} onChange={(n) => props.onChange(n)} />}
      slab={
        <Slab
          label={bench.thatsIt}
          then={askPage.title}
          fresh="loaves"
          onPress={() => props.onBack()}
        />
      }
    />
  );
}
