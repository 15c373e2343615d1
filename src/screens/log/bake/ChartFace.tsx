import { createMemo, createSignal, Show, type JSX } from 'solid-js';
import { bakeChart } from '../../../core/log/chart/bake-chart.ts';
import { bakePanels, PANELS } from '../../../core/log/chart/bake-panels.ts';
import { panelsThatFit } from '../../../core/log/chart/stacked.ts';
import { logBake as words } from '../../../core/speech/words/log-bake.ts';
import { fill } from '../../../core/speech/fill.ts';
import { showBread } from '../../../core/speech/show-bread.ts';
import { Control } from '../../../parts/Control.tsx';
import { Drawn } from '../../../parts/Drawn.tsx';
import { Words } from '../../../parts/Words.tsx';
import type { House } from '../../house.ts';
import { LogPage } from '../LogPage.tsx';
import { RowsTable } from './RowsTable.tsx';
import type { Telling } from './telling.ts';
import './Bake.css';

/** A bake drawn on its time, as many panels at once as have room; and the same in rows. */
export function ChartFace(props: {
  readonly house: House;
  readonly telling: Telling;
  readonly onBack: () => void;
}): JSX.Element {
  const [fits, setFits] = createSignal(1);
  const [at, setAt] = createSignal(0);
  const [table, setTable] = createSignal(false);
  const names = createMemo(() => {
    const found = bakePanels(props.telling.charted, props.telling.units);
    return PANELS.filter((name) => found[name]);
  });
  const groups = createMemo(() =>
    Array.from({ length: Math.ceil(names().length / fits()) }, (_, n) =>
      names().slice(n * fits(), (n + 1) * fits()),
    ),
  );
  const group = () => groups()[at() % Math.max(1, groups().length)] ?? [];
  const chart = createMemo(() => bakeChart(props.telling.charted, group(), props.telling));
  /** Two panels are told; of more the chart itself tells. */
  const headline = (): string => {
    const [one, other, more] = group().map((name) => words.drawn[name]);
    if (one === undefined || more !== undefined) return words.chart;
    return other === undefined ? one : fill(words.drawnTwo, { one, other });
  };
  return (
    <LogPage
      wide
      back={showBread(props.telling.page.name)}
      onBack={() => props.onBack()}
      caption={props.house.caption()}
      words={
        <Show when={chart()} fallback={<Words headline={words.chart} detail={words.empty.chart} />}>
          {(its) => (
            <Words headline={headline()}>
              <Show
                when={table()}
                fallback={
                  <div class="bake-chart">
                    <Drawn
                      draw={(room) => its().draw(room)}
                      alt={its().says}
                      onRoom={(room) => setFits(panelsThatFit(room))}
                    />
                  </div>
                }
              >
                <RowsTable table={its().table} label={headline()} />
              </Show>
            </Words>
          )}
        </Show>
      }
      controls={
        <Show when={chart()}>
          {(its) => (
            <>
              <Control
                label={table() ? words.asChart : words.asTable}
                onPress={() => setTable(!table())}
              />
              <Show when={groups().length > 1}>
                <Control
                  label={words.nextChart}
                  fresh="next"
                  onPress={() => setAt((at() + 1) % groups().length)}
                />
              </Show>
              <Control label={words.sayChart} onPress={() => props.house.say(its().says)} />
            </>
          )}
        </Show>
      }
    />
  );
}
