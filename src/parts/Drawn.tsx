import { createSignal, createUniqueId, For, onCleanup, onMount, Show, type JSX } from 'solid-js';
import { MARK_PATHS } from '../core/log/chart/mark-paths.ts';
import type { Drawing, DrawingRoom, DrawnPart } from '../core/log/drawing.ts';
import './Drawn.css';

/** Overpass: cap height and a letter's mean width in its font's size. */
const CAP = 0.7;
const LETTER = 0.58;

const points = (spots: readonly (readonly [number, number])[]): string =>
  spots.map(([x, y]) => `${x.toFixed(2)},${y.toFixed(2)}`).join(' ');

function Part(props: { readonly part: DrawnPart; readonly hatch: string; readonly size: number }) {
  const { part } = props;
  switch (part.kind) {
    case 'line':
      return (
        <polyline
          points={points(part.at)}
          data-weight={part.weight}
          data-dashed={part.dashed ? '' : undefined}
        />
      );
    case 'area':
      return <polygon points={points(part.at)} fill={`url(#${props.hatch})`} data-weight="hair" />;
    case 'mark': {
      const { d, hollow } = MARK_PATHS[part.shape];
      return (
        <path
          d={d}
          transform={`translate(${part.at[0].toFixed(2)} ${part.at[1].toFixed(2)})`}
          fill={hollow ? 'var(--ground)' : 'var(--ink)'}
          stroke="var(--ink)"
          stroke-width="0.5"
        />
      );
    }
    case 'text':
      return (
        <text
          x={part.at[0].toFixed(2)}
          y={part.at[1].toFixed(2)}
          text-anchor={part.anchor}
          font-size={props.size.toFixed(2)}
          {...(part.onGround
            ? { stroke: 'var(--ground)', 'stroke-width': '0.8', 'paint-order': 'stroke' }
            : {})}
        >
          {part.text}
        </text>
      );
  }
}

/** A drawing that fills its place: made for the millimetres there are, again whenever that changes. */
export function Drawn(props: {
  readonly draw: (room: DrawingRoom) => Drawing;
  /** For ears. */
  readonly alt: string;
  /** The place there is, as it is laid out: told again whenever that changes. */
  readonly onRoom?: (room: DrawingRoom) => void;
}): JSX.Element {
  let figure!: HTMLElement;
  const hatch = createUniqueId();
  const [room, setRoom] = createSignal<(DrawingRoom & { readonly size: number }) | null>(null);
  const measure = (): void => {
    const style = getComputedStyle(figure);
    const mm = Number.parseFloat(style.getPropertyValue('--px-per-mm'));
    const size = Number.parseFloat(style.fontSize) / mm;
    const [width, height] = [figure.clientWidth / mm, figure.clientHeight / mm];
    if (!(width > 0 && height > 0 && size > 0)) return;
    const its = { width, height, size, cap: size * CAP, letter: size * LETTER };
    setRoom(its);
    props.onRoom?.(its);
  };
  const observer = typeof ResizeObserver === 'undefined' ? null : new ResizeObserver(measure);
  onMount(() => observer?.observe(figure));
  onCleanup(() => observer?.disconnect());
  return (
    <figure class="drawn" role="img" aria-label={props.alt} ref={figure}>
      <Show when={room()}>
        {(its) => {
          const drawing = () => props.draw(its());
          return (
            <svg viewBox={`0 0 ${drawing().width} ${drawing().height}`} aria-hidden="true">
              <defs>
                <pattern
                  id={hatch}
                  width="1.6"
                  height="1.6"
                  patternUnits="userSpaceOnUse"
                  patternTransform="rotate(45)"
                >
                  <path d="M0 0V1.6" stroke="var(--ink-2)" stroke-width="0.25" />
                </pattern>
              </defs>
              <For each={drawing().parts}>
                {(part) => <Part part={part} hatch={hatch} size={its().size} />}
              </For>
            </svg>
          );
        }}
      </Show>
    </figure>
  );
}
