import { For, Show, type JSX } from 'solid-js';
import type { BaseDough } from '../../../core/circle/base-dough.ts';
import { goesIn } from '../../../core/formula/goes-in.ts';
import { doughIn } from '../../../core/kitchen/split-bowls.ts';
import { doughBowls, doughPage } from '../../../core/speech/words/circle-dough.ts';
import { shown } from '../../../core/speech/facts.ts';
import { fill } from '../../../core/speech/fill.ts';
import { tellClocks, tellShares } from '../../../core/speech/in-bowls.ts';
import { tellLine } from '../../../core/speech/tell-line.ts';
import { showWeight } from '../../../core/speech/weights.ts';
import { unbroken } from '../../../parts/unbroken.ts';
import { Words } from '../../../parts/Words.tsx';
import { BowlsTable } from '../../BowlsTable.tsx';
import type { House } from '../../house.ts';
import { CirclePage } from '../CirclePage.tsx';
import { batchName } from './dough-day.ts';

/** One dough: what each of its bowls takes and when it is mixed, and what goes into which bread later. */
export function BaseFace(props: {
  readonly house: House;
  readonly dough: BaseDough;
  /** On to the next dough, where there are several. */
  readonly controls: JSX.Element;
  readonly onBack: () => void;
}): JSX.Element {
  const units = () => props.house.ways();
  const bowls = () => props.dough.bowls;
  const names = (): string =>
    props.dough.batches.map((batch) => batchName(batch, units())).join(' · ');
  const filled = () => props.dough.batches.filter(({ recipe }) => recipe.lines.filling.length > 0);
  return (
    <CirclePage
      wide
      back={doughPage.title}
      onBack={() => props.onBack()}
      words={
        <Words
          headline={
            tellShares(bowls(), units()) ||
            fill(doughBowls.one, { grams: showWeight(doughIn(bowls()[0]!), units()) })
          }
          detail={tellClocks(bowls().length)?.shown}
        >
          <div class="dough-bowls circle-top">
            <p class="dough-for">{fill(doughBowls.of, { name: names() })}</p>
            <BowlsTable bowls={bowls()} units={units()} class="circle-table" totals />
          </div>
          <Show when={filled().length > 0}>
            <table class="circle-table dough-later">
              <thead>
                <tr>
                  <th scope="col" colspan="2">
                    {doughBowls.later}
                  </th>
                </tr>
              </thead>
              <tbody>
                <For each={filled()}>
                  {(batch) => (
                    <For each={goesIn(batch.recipe.lines.filling)}>
                      {(line) => (
                        <tr>
                          <th scope="row">
                            {fill(doughBowls.filling, {
                              name: batchName(batch, units()),
                              ...shown({ loaves: batch.loaves }),
                            })}
                          </th>
                          <td>
                            {unbroken(`${showWeight(line.grams, units())} ${tellLine(line)}`)}
                          </td>
                        </tr>
                      )}
                    </For>
                  )}
                </For>
              </tbody>
            </table>
          </Show>
          <Show when={props.dough.batches.length > 1}>
            <p class="dough-for">{doughBowls.together}</p>
          </Show>
        </Words>
      }
      controls={props.controls}
    />
  );
}
