import { Show, type JSX } from 'solid-js';
import { logPlots as words } from '../../../core/speech/words/log-plots.ts';
import { fill } from '../../../core/speech/fill.ts';
import { Control } from '../../../parts/Control.tsx';
import { Tiles } from '../../../parts/Tiles.tsx';
import { unbroken } from '../../../parts/unbroken.ts';
import { Words } from '../../../parts/Words.tsx';
import { LogPage } from '../LogPage.tsx';
import type { PastBakes } from './past-bakes.ts';
import './Plots.css';

export type PlotName = 'ended' | 'vigour' | 'forecast';
const PLOTS: readonly PlotName[] = ['ended', 'vigour', 'forecast'];

/** Which plot, of which bread; what forecasts were worth stands here already. */
export function MenuFace(props: {
  readonly past: PastBakes;
  readonly bread: string;
  /** How many breads there are to choose from. */
  readonly breads: number;
  readonly forecast: string;
  readonly back: string;
  readonly onOpen: (which: PlotName | 'bread') => void;
  readonly onBack: () => void;
}): JSX.Element {
  const detail = (): string => {
    const { all, bakes, done } = props.past;
    return done() ? props.forecast : fill(words.counted, { count: bakes().length, n: all });
  };
  return (
    <LogPage
      wide
      back={props.back}
      onBack={() => props.onBack()}
      words={
        <Words
          headline={props.past.all === 0 ? words.none : words.title}
          detail={props.past.all === 0 ? words.noneDetail : undefined}
        >
          <Show when={props.past.all > 0}>
            <p class="plot-told">{unbroken(detail())}</p>
            <div class="plot-choice">
              <Tiles
                label={words.title}
                options={PLOTS.map((value) => ({
                  value,
                  label: words[value].title,
                  means: words[value].means,
                }))}
                onChoose={(which) => props.onOpen(which as PlotName)}
              />
            </div>
          </Show>
        </Words>
      }
      controls={
        <Show when={props.breads > 1}>
          <Control label={words.bread} value={props.bread} onPress={() => props.onOpen('bread')} />
        </Show>
      }
    />
  );
}
