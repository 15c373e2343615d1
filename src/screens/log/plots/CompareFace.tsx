import { createMemo, createSignal, type JSX } from 'solid-js';
import { comparePlot, type Compared } from '../../../core/log/plots/compare-plot.ts';
import type { ToldIn } from '../../../core/log/plots/told-in.ts';
import { log } from '../../../core/speech/words/log.ts';
import { logPlots } from '../../../core/speech/words/log-plots.ts';
import { fill } from '../../../core/speech/fill.ts';
import { showHeat } from '../../../core/speech/heats.ts';
import { showBread } from '../../../core/speech/show-bread.ts';
import { makeAllBakes } from '../all-bakes.ts';
import type { FaceProps } from '../face.ts';
import { readPastBakes } from './past-bakes.ts';
import { pagedBy, PlotPage } from './PlotPage.tsx';

const words = logPlots.compare;

/** Panels on a page: in bigger words as many as still have their date over them. */
const EACH = { plain: 6, bigger: 2 } as const;
/** What the dough clock's hours are counted at, °C. */
const CLOCK_AT = 26;

/** All bakes of the formula that one bake was of, side by side. */
export default function CompareFace(props: FaceProps & { readonly start: string }): JSX.Element {
  // eslint-disable-next-line solid/reactivity -- read once a page opening
  const one = makeAllBakes(props.house, props.log)().find(({ start }) => start === props.start);
  // eslint-disable-next-line solid/reactivity -- read once a page opening
  const past = readPastBakes(props.house, props.log, ({ formula }) => formula === one?.formula);
  const [turned, setTurned] = createSignal<number | null>(null);
  const each = (): number => EACH[props.house.ways().text];
  /** Where the bake is that one came from: its page is the first to be seen. */
  const its = createMemo(() => past.bakes().findIndex((bake) => bake.past.start === props.start));
  const paged = createMemo(() =>
    pagedBy(past.bakes().length, each(), turned() ?? Math.max(0, Math.floor(its() / each()))),
  );
  const told = createMemo((): ToldIn => ({
    date: (at) => props.house.date(at),
    units: props.house.ways(),
  }));
  const shown = createMemo((): readonly Compared[] =>
    past
      .bakes()
      .slice(paged().at * each(), (paged().at + 1) * each())
      .map(({ past: bake, curve }) => ({
        ...bake,
        curve: curve(),
        chosen: bake.start === props.start,
      })),
  );
  const chart = createMemo(() => comparePlot(shown(), told()));
  const none = (): string | null => {
    if (shown().length > 0) return null;
    if (one === undefined) return log.gone;
    return past.done() ? words.none : logPlots.counting;
  };
  return (
    <PlotPage
      title={one ? showBread(one.name) : log.title}
      detail={
        past.done() && past.bakes().length === 1
          ? words.one
          : fill(words.detail, { celsius: showHeat(CLOCK_AT, props.house.ways()) })
      }
      none={none()}
      chart={chart()}
      paged={paged()}
      onPaged={setTurned}
      back={logPlots.back}
      onBack={() => props.onBack()}
      onSay={(text) => props.house.say(text)}
    />
  );
}
