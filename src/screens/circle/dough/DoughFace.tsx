import { For, Show, type JSX } from 'solid-js';
import { doughPage } from '../../../core/speech/words/circle-dough.ts';
import { shown } from '../../../core/speech/facts.ts';
import { fill } from '../../../core/speech/fill.ts';
import { showWeight } from '../../../core/speech/weights.ts';
import { Control } from '../../../parts/Control.tsx';
import { Slab } from '../../../parts/Slab.tsx';
import { unbroken } from '../../../parts/unbroken.ts';
import { Words } from '../../../parts/Words.tsx';
import type { House } from '../../house.ts';
import { CirclePage } from '../CirclePage.tsx';
import { batchName, troubleWords, type DoughDay } from './dough-day.ts';
import { softWords } from '../../../parts/soft-words.ts';

/** Where one goes from here. */
export type DoughTurn = 'bowls' | 'levain' | 'loads';

/** A bake day's loaves, bread by bread, what cannot be baked, and the press that lays it on the clock. */
export function DoughFace(props: {
  readonly house: House;
  readonly date: string;
  readonly all: DoughDay;
  readonly onTurn: (to: DoughTurn) => void;
  readonly onLay: () => void;
  readonly onBack: () => void;
}): JSX.Element {
  const units = () => props.house.ways();
  const loaves = (): number => props.all.batches.reduce((sum, one) => sum + one.loaves, 0);
  const told = (): readonly string[] => [
    ...props.all.troubles.map((trouble) => troubleWords(trouble, props.house)),
    ...props.all.baking
      .filter(({ run }) => run === null)
      .map(({ batch }) => fill(doughPage.nowhere, { name: batchName(batch, units()) })),
  ];
  const some = (): boolean => props.all.batches.length > 0;
  return (
    <CirclePage
      wide
      back={props.date}
      onBack={() => props.onBack()}
      words={
        <Words
          headline={doughPage.title}
          detail={
            some() || told().length > 0
              ? fill(doughPage.detail, { date: props.date, ...shown({ loaves: loaves() }) })
              : doughPage.none
          }
        >
          <Show when={told().length > 0}>
            <ul class="circle-told circle-top" aria-label={doughPage.troubles}>
              <For each={told()}>{(words) => <li class="barred">{words}</li>}</For>
            </ul>
          </Show>
          <Show when={some()}>
            <table class="circle-table circle-top">
              <thead>
                <tr>
                  <th scope="col">{softWords(doughPage.bread)}</th>
                  <th scope="col">{softWords(doughPage.loaves)}</th>
                  <th scope="col">{softWords(doughPage.piece)}</th>
                  <th scope="col">{softWords(doughPage.loads)}</th>
                </tr>
              </thead>
              <tbody>
                <For each={props.all.baking}>
                  {({ batch, run }) => (
                    <tr>
                      <th scope="row">{softWords(batchName(batch, units()))}</th>
                      <td>{batch.loaves}</td>
                      <td>{unbroken(showWeight(batch.piece, units()))}</td>
                      <td>{run?.loads ?? '–'}</td>
                    </tr>
                  )}
                </For>
              </tbody>
            </table>
          </Show>
        </Words>
      }
      slab={
        <Slab
          label={doughPage.slab}
          then={doughPage.then}
          fresh="lay"
          disabled={!some() || !props.house.holds}
          onPress={() => props.onLay()}
        />
      }
      controls={
        <>
          <Show when={some()}>
            <Control label={doughPage.bowls} onPress={() => props.onTurn('bowls')} />
            <Control label={doughPage.levain} onPress={() => props.onTurn('levain')} />
            <Control label={doughPage.hours} onPress={() => props.onTurn('loads')} />
          </Show>
          <Control label={props.date} onPress={() => props.onBack()} />
        </>
      }
    />
  );
}
