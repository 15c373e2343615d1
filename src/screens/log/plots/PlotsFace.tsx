import { createMemo, createSignal, Match, Switch, type JSX } from 'solid-js';
import type { Chart } from '../../../core/log/drawing.ts';
import { endedPlot } from '../../../core/log/plots/ended-plot.ts';
import { forecastPlot } from '../../../core/log/plots/forecast-plot.ts';
import type { ToldIn } from '../../../core/log/plots/told-in.ts';
import { vigourPlot } from '../../../core/log/plots/vigour-plot.ts';
import { log } from '../../../core/speech/words/log.ts';
import { logPlots as words } from '../../../core/speech/words/log-plots.ts';
import { fill } from '../../../core/speech/fill.ts';
import { showBread } from '../../../core/speech/show-bread.ts';
import type { FaceProps } from '../face.ts';
import { BreadFace, type Bread } from './BreadFace.tsx';
import { MenuFace, type PlotName } from './MenuFace.tsx';
import { readPastBakes } from './past-bakes.ts';
import { pagedBy, PlotPage } from './PlotPage.tsx';

/** Bakes that one plot shows: a year of a weekly baker, and marks that can still be told apart. */
const SHOWN = 60;

/** Plots of the baker's own bakes: how they turned out, the starter, and what forecasts were worth. */
export default function PlotsFace(props: FaceProps): JSX.Element {
  // eslint-disable-next-line solid/reactivity -- read once a page opening
  const past = readPastBakes(props.house, props.log, () => true);
  const [bread, setBread] = createSignal<Bread | null>(null);
  const [at, setAt] = createSignal<PlotName | 'bread' | null>(null);
  const [page, setPage] = createSignal(0);
  const of = createMemo(() => {
    const only = bread();
    const all = past.bakes().map((one) => one.past);
    return only === null ? all : all.filter(({ formula }) => formula === only.formula);
  });
  const breads = createMemo((): readonly Bread[] => {
    const found = new Map<string, string>();
    for (const { past: one } of past.bakes())
      if (!found.has(one.formula)) found.set(one.formula, showBread(one.name));
    return [...found].map(([formula, name]) => ({ formula, name }));
  });
  const paged = createMemo(() => pagedBy(of().length, SHOWN, page()));
  const shown = createMemo(() => of().slice(paged().at * SHOWN, (paged().at + 1) * SHOWN));
  const told = createMemo((): ToldIn => ({
    date: (when) => props.house.date(when),
    units: props.house.ways(),
  }));
  const ended = createMemo(() => endedPlot(shown(), told()));
  const vigour = createMemo(() => vigourPlot(shown(), told()));
  const forecast = createMemo(() => forecastPlot(shown(), of(), told()));
  const open = (which: PlotName | 'bread' | null): void => {
    setPage(0);
    setAt(which);
  };
  // Handed on as accessors: what is drawn anew while the log is read must not open the page anew.
  const plot = (
    name: PlotName,
    chart: () => Chart,
    detail: () => string,
    count: () => number,
  ): JSX.Element => (
    <PlotPage
      title={bread()?.name ?? words[name].title}
      detail={detail()}
      tableDetail={name === 'forecast' ? forecast().plain.join(' ') : undefined}
      none={count() > 0 ? null : past.done() ? words[name].none : words.counting}
      chart={chart()}
      paged={paged()}
      onPaged={setPage}
      back={words.toPlots}
      onBack={() => open(null)}
      onSay={(text) => props.house.say(text)}
    />
  );
  const endedDetail = (): string => {
    const { left } = ended();
    if (left === 0) return words.ended.detail;
    return left === 1 ? words.ended.leftOne : fill(words.ended.left, { count: left });
  };
  return (
    <Switch
      fallback={
        <MenuFace
          past={past}
          bread={bread()?.name ?? words.all}
          breads={breads().length}
          forecast={forecast().plain.slice(0, 2).join(' ')}
          back={log.title}
          onOpen={open}
          onBack={() => props.onBack()}
        />
      }
    >
      <Match when={at() === 'bread'}>
        <BreadFace
          breads={breads()}
          chosen={bread()}
          onChoose={(which) => {
            setBread(which);
            open(null);
          }}
          onBack={() => open(null)}
        />
      </Match>
      <Match when={at() === 'ended'}>
        {plot('ended', ended, endedDetail, () => ended().table.rows.length)}
      </Match>
      <Match when={at() === 'vigour'}>
        {plot(
          'vigour',
          vigour,
          () => words.vigour.detail,
          () => vigour().marks,
        )}
      </Match>
      <Match when={at() === 'forecast'}>
        {plot(
          'forecast',
          forecast,
          () => forecast().plain.slice(0, 2).join(' '),
          () => forecast().marks,
        )}
      </Match>
    </Switch>
  );
}
