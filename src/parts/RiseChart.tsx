import { For, onCleanup, onMount, Show, type JSX } from 'solid-js';
import './RiseChart.css';

interface Spot {
  readonly x: number;
  readonly y: number;
}

export interface RiseChartProps {
  /** Everything 0–1 from the chart's left and top. */
  readonly band: readonly Spot[];
  readonly likely: readonly Spot[];
  readonly jar: readonly Spot[];
  readonly goal: number;
  readonly now: number;
  readonly marks: readonly (Spot & {
    readonly shape: 'bowl' | 'jar' | 'growth' | 'dent' | 'line';
    readonly label: string;
    readonly side: 'left' | 'right';
    readonly up: number;
  })[];
  readonly across: readonly { readonly x: number; readonly label: string }[];
  readonly up: readonly { readonly y: number; readonly label: string }[];
  /** The whole of it in a sentence or two, for ears. */
  readonly alt: string;
  /** What a letter takes of the chart, as it is laid out: asked for again whenever that changes. */
  readonly onRoom: (room: { readonly letter: number; readonly line: number }) => void;
}

/** Told apart by shape: a filled square, a hollow triangle, a ring, a cross. */
const SHAPES: Readonly<Record<RiseChartProps['marks'][number]['shape'], JSX.Element>> = {
  get bowl() {
    return <path d="M2 2h12v12H2z" fill="currentColor" />;
  },
  get jar() {
    return <path d="M8 2l7 12H1z" fill="var(--ground)" stroke="currentColor" stroke-width="2.4" />;
  },
  get growth() {
    return (
      <circle cx="8" cy="8" r="5.8" fill="var(--ground)" stroke="currentColor" stroke-width="2.4" />
    );
  },
  get dent() {
    return <path d="M2 2l12 12M14 2L2 14" stroke="currentColor" stroke-width="3" />;
  },
  line: null,
};

/** A letter's width and a label's height in its font's size. */
const LETTER = 0.58;
const LINE = 1.28;

const percent = (share: number): string => `${(100 * share).toFixed(2)}%`;
const line = (spots: readonly Spot[]): string =>
  spots.map(({ x, y }) => `${(1000 * x).toFixed(1)},${(1000 * y).toFixed(1)}`).join(' ');

/** A rise against time: what is believed as a hatched band, what was read as marks, and the goal. */
export function RiseChart(props: RiseChartProps): JSX.Element {
  let plot!: HTMLDivElement;
  const measure = (): void => {
    const { clientWidth, clientHeight } = plot;
    const size = Number.parseFloat(getComputedStyle(plot).fontSize);
    if (clientWidth > 0 && clientHeight > 0 && size > 0)
      props.onRoom({ letter: (LETTER * size) / clientWidth, line: (LINE * size) / clientHeight });
  };
  const observer = typeof ResizeObserver === 'undefined' ? null : new ResizeObserver(measure);
  onMount(() => observer?.observe(plot));
  onCleanup(() => observer?.disconnect());
  return (
    <figure class="rise-chart" role="img" aria-label={props.alt}>
      <div class="rise-up" aria-hidden="true">
        <For each={props.up}>
          {(tick) => <span style={{ '--y': percent(tick.y) }}>{tick.label}</span>}
        </For>
      </div>
      <div class="rise-plot" aria-hidden="true" ref={plot}>
        <svg viewBox="0 0 1000 1000" preserveAspectRatio="none">
          <defs>
            <pattern
              id="rise-hatch"
              width="14"
              height="14"
              patternUnits="userSpaceOnUse"
              patternTransform="rotate(45)"
            >
              <path d="M0 0V14" class="rise-hatch" />
            </pattern>
          </defs>
          <For each={props.up}>
            {(tick) => <path class="rise-tick" d={`M0 ${1000 * tick.y}H1000`} />}
          </For>
          <For each={props.across}>
            {(tick) => <path class="rise-tick" d={`M${1000 * tick.x} 985V1000`} />}
          </For>
          <polygon class="rise-band" points={line(props.band)} fill="url(#rise-hatch)" />
          <polyline class="rise-likely" points={line(props.likely)} />
          <polyline class="rise-jar" points={line(props.jar)} />
          <path class="rise-goal" d={`M0 ${1000 * props.goal}H1000`} />
          <path class="rise-now" d={`M${1000 * props.now} 0V1000`} />
        </svg>
        <For each={props.marks}>
          {(mark) => (
            <span
              class="rise-mark"
              data-shape={mark.shape}
              style={{ '--x': percent(mark.x), '--y': percent(mark.y) }}
            >
              <Show when={mark.shape !== 'line'}>
                <svg viewBox="0 0 16 16">{SHAPES[mark.shape]}</svg>
              </Show>
              <b class="rise-label" data-side={mark.side} style={{ '--up': mark.up }}>
                {mark.label}
              </b>
            </span>
          )}
        </For>
      </div>
      <div class="rise-across" aria-hidden="true">
        <For each={props.across}>
          {(tick) => <span style={{ '--x': percent(tick.x) }}>{tick.label}</span>}
        </For>
      </div>
    </figure>
  );
}
