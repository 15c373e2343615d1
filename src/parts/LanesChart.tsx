import { For, onCleanup, onMount, Show, type JSX } from 'solid-js';
import type { LaneShown, LanesShown } from './lanes-shown.ts';
import { unbroken } from './unbroken.ts';
import './LanesChart.css';

export interface LanesChartProps extends LanesShown {
  /** What the two marks are. */
  readonly lid: string;
  readonly out: string;
  /** The whole of it in a sentence or two, for ears. */
  readonly alt: string;
  /** What a letter takes of a lane's width, as it is laid out: told again whenever that changes. */
  readonly onRoom: (letter: number) => void;
}

/** A digit's width in its font's size. */
const LETTER = 0.58;

const percent = (share: number): string => `${(100 * share).toFixed(2)}%`;

/** Told apart by shape: a lid that is lifted, a loaf on a rack. */
const SHAPES: Readonly<Record<'lid' | 'out', string>> = {
  lid: 'M0 14V11Q1 5 6 4.5V1H10V4.5Q15 5 16 11V14Z',
  out: 'M2 2H14V14H2Z',
};
const Mark = (props: { readonly shape: 'lid' | 'out' }): JSX.Element => (
  <svg class="lanes-shape" viewBox="0 0 16 16" aria-hidden="true">
    <path d={SHAPES[props.shape]} fill="currentColor" />
  </svg>
);

function Block(props: { readonly block: LaneShown['blocks'][number] }): JSX.Element {
  const ends = () => ({
    '--from': percent(props.block.from),
    '--lid': percent(props.block.lid),
    '--to': percent(props.block.to),
  });
  return (
    <div
      class="lanes-block"
      style={ends()}
      data-stands={props.block.stands ? '' : undefined}
      data-cut-start={props.block.cutStart ? '' : undefined}
      data-cut-end={props.block.cutEnd ? '' : undefined}
    >
      <Show when={props.block.lid > props.block.from}>
        <i class="lanes-lidded" />
      </Show>
      <Show when={props.block.to > props.block.lid}>
        <i class="lanes-open" />
      </Show>
      <Show when={props.block.number}>{(number) => <b class="lanes-number">{number()}</b>}</Show>
      <For each={props.block.marks}>
        {(mark) => (
          <span class="lanes-mark" data-shape={mark.shape} style={{ '--x': percent(mark.x) }}>
            <Show when={mark.time !== null}>
              <span class="lanes-label">
                <Show when={mark.number}>{(number) => <b>{number()}</b>}</Show>
                {mark.time}
              </span>
            </Show>
            <Mark shape={mark.shape} />
          </span>
        )}
      </For>
    </div>
  );
}

/** Pots as lanes, one under the other on one time: each loaf a block, its lid and its end marked. */
export function LanesChart(props: LanesChartProps): JSX.Element {
  let chart!: HTMLElement;
  const measure = (): void => {
    const track = chart.querySelector('.lanes-track');
    const size = Number.parseFloat(getComputedStyle(chart).fontSize);
    if (track && track.clientWidth > 0 && size > 0)
      props.onRoom((LETTER * size) / track.clientWidth);
  };
  const observer = typeof ResizeObserver === 'undefined' ? null : new ResizeObserver(measure);
  onMount(() => observer?.observe(chart));
  onCleanup(() => observer?.disconnect());
  return (
    <figure class="lanes-chart" role="img" aria-label={props.alt} ref={chart}>
      <div aria-hidden="true">
        <p class="lanes-top" style={{ '--x': percent(props.now?.x ?? 0) }}>
          {props.now ? props.now.label : `${props.from} – ${props.until}`}
        </p>
        <For each={props.lanes}>
          {(lane) => (
            <div class="lanes-lane">
              <p>
                <b>{unbroken(lane.pot)}</b>
                <Show when={lane.note}>{(note) => <span> · {note()}</span>}</Show>
              </p>
              <div class="lanes-track">
                <Show when={props.now}>
                  {(now) => <i class="lanes-now" style={{ '--x': percent(now().x) }} />}
                </Show>
                <For each={lane.blocks}>{(block) => <Block block={block} />}</For>
              </div>
            </div>
          )}
        </For>
        <p class="lanes-key">
          <Mark shape="lid" />
          {props.lid}
          <Mark shape="out" />
          {props.out}
        </p>
      </div>
    </figure>
  );
}
