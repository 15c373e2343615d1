import { Show, type JSX } from 'solid-js';
import type { EarShown } from '../core/ear/shown.ts';
import { EarOutline } from './EarOutline.tsx';
import './HeardMark.css';

/** What the ear does, told by its shape: waves reach an open one, a line crosses one that has no microphone. */
export function HeardMark(props: {
  readonly state: EarShown['state'];
  /** What it tells by itself, where no words beside it do. */
  readonly says?: string | undefined;
}): JSX.Element {
  const hears = (): boolean => props.state === 'open' || props.state === 'speaks';
  const lost = (): boolean => !hears() && props.state !== 'shut';
  return (
    <svg
      viewBox="0 0 62 48"
      role="img"
      aria-hidden={props.says === undefined}
      aria-label={props.says}
      class="heard-mark"
      data-state={props.state}
    >
      <g fill="none" stroke="currentColor" stroke-width="3.6" stroke-linecap="round">
        {/* Waves come from before it. */}
        <g transform="translate(22)">
          <EarOutline />
        </g>
        <Show when={hears()}>
          <path d="M19 12c-3 5-3 13 0 18" />
          <path d="M10 7c-5 8-5 20 0 28" />
        </Show>
        <Show when={props.state === 'speaks'}>
          <path d="M3 3v36" stroke-width="5" />
        </Show>
        <Show when={lost()}>
          <path d="M25 45 59 5" />
        </Show>
      </g>
    </svg>
  );
}
