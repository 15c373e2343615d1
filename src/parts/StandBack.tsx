import type { JSX } from 'solid-js';

/** A grown-up at the pot; a child well away, hands down. */
export function StandBack(props: { readonly alt: string }): JSX.Element {
  return (
    <svg viewBox="0 0 240 96" role="img" aria-label={props.alt}>
      <g fill="none" stroke="currentColor" stroke-width="4" stroke-linejoin="round">
        <path d="M8 90h224" />
        <path d="M20 90V66h48v24M16 66h56M36 58h16v8" />
        <path d="M30 50c-4-6 4-9 0-16M44 48c-4-6 4-9 0-16M58 50c-4-6 4-9 0-16" />
        <circle cx="106" cy="18" r="10" />
        <path d="M106 28c-10 2-12 10-12 20v42M106 28c10 2 12 10 12 20v42M106 60v30M98 40 74 58" />
        <circle cx="206" cy="50" r="8" />
        <path d="M206 58c-8 2-9 8-9 14v18M206 58c8 2 9 8 9 14v18M206 74v16" />
      </g>
      <path
        d="M132 78h50M132 72v12M182 72v12"
        fill="none"
        stroke="currentColor"
        stroke-width="4"
        stroke-dasharray="7 5"
      />
    </svg>
  );
}
