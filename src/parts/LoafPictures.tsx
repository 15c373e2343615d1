import { For, Show, type JSX } from 'solid-js';
import type { LoafSign, Shown } from '../core/log/loaf-names.ts';
import { CrustPicture } from './ReadingPictures.tsx';

/* Drawings of a cut loaf, one family: the slice as it faces its baker. The words under a tile say it too. */

const LINE = { fill: 'none', stroke: 'currentColor', 'stroke-width': 2 } as const;
const SOLID = { fill: 'currentColor' } as const;
const PALE = { fill: 'currentColor', opacity: 0.3 } as const;

type Hole = readonly [cx: number, cy: number, rx: number, ry?: number];

const SLICE = 'M8 34C4 16 18 6 36 6S68 16 64 34Q63 39 58 39H14Q9 39 8 34Z';

function Frame(props: { readonly children: JSX.Element }): JSX.Element {
  return (
    <svg viewBox="0 0 72 44" aria-hidden="true">
      {props.children}
    </svg>
  );
}

const Holes = (props: { readonly holes: readonly Hole[]; readonly filled?: boolean }) => (
  <For each={props.holes}>
    {([cx, cy, rx, ry = rx]) => (
      <ellipse
        cx={cx}
        cy={cy}
        rx={rx}
        ry={ry}
        {...(props.filled ? SOLID : { ...LINE, 'stroke-width': 1.6 })}
      />
    )}
  </For>
);

/** Holes in rows, each row shifted: so many across, of one size. */
const rows = (
  tops: readonly number[],
  step: number,
  size: number,
  [from, to]: readonly [number, number] = [14, 58],
): readonly Hole[] =>
  tops.flatMap((cy, n) => {
    const inset = cy < 14 ? 11 : cy < 22 ? 3 : 0;
    const first = from + inset + (n % 2) * (step / 2);
    const count = Math.max(0, Math.floor((to - inset - first) / step) + 1);
    return Array.from({ length: count }, (_, i): Hole => [first + i * step, cy, size]);
  });

const EVEN = rows([13, 20, 27, 34], 7.6, 2, [15.4, 57]);
const TIGHT = rows([12, 16, 20, 24, 28, 32, 36], 5, 0.7, [13, 60]);
const BIG: readonly Hole[] = [
  [24, 22, 7, 5],
  [46, 18, 6, 4.5],
  [40, 31, 5, 3.5],
];
const OPEN: readonly Hole[] = [
  [20, 19, 3.4],
  [29, 13, 2.4],
  [38, 14, 3.6],
  [49, 17, 2.6],
  [56, 25, 3.4],
  [47, 26, 3.8, 3],
  [36, 24, 2.6],
  [27, 26, 4, 3.2],
  [17, 30, 2.8],
  [37, 34, 3, 2],
  [56, 34, 2],
  [26, 35, 2],
];
const FILLINGS: readonly Hole[] = [
  [22, 20, 3.4],
  [42, 16, 3.4],
  [52, 29, 3.4],
  [31, 31, 3.4],
];
/** What is left open about each of them. */
const GAPS: readonly Hole[] = FILLINGS.map(([cx, cy]) => [cx, cy - 1, 7, 5.6]);

const isNear = ([x, y]: Hole, [cx, cy]: Hole, far: number): boolean =>
  Math.hypot(x - cx, (y - cy) * 1.2) < far;
const BETWEEN_BIG = TIGHT.filter((one) => !BIG.some((big) => isNear(one, big, big[2] + 1.5)));

const Slice = (props: { readonly children?: JSX.Element }): JSX.Element => (
  <Frame>
    {props.children}
    <path d={SLICE} {...LINE} stroke-width="2.6" />
  </Frame>
);

const Unsure = (): JSX.Element => (
  <Slice>
    <path d="M29 18c0-9 14-9 13-1 0 6-6 6-6 11M36 33v3" {...LINE} stroke-width="2.6" />
  </Slice>
);

const CRUMB: Readonly<Record<Shown<'crumb'>, () => JSX.Element>> = {
  even: () => <Holes holes={EVEN} />,
  tight: () => <Holes holes={TIGHT} filled />,
  bigHoles: () => (
    <>
      <Holes holes={BETWEEN_BIG} filled />
      <Holes holes={BIG} />
    </>
  ),
  // Wet and shut in the middle and below, a smear where the knife went.
  gummy: () => (
    <>
      <path
        d="M12 34C12 20 24 15 36 15S60 20 60 34Q60 36 57 36H15Q12 36 12 34Z"
        {...SOLID}
        opacity="0.55"
      />
      <path
        d="M20 30c5-5 9 4 14-1s9 4 16-1"
        stroke="var(--ground)"
        stroke-width="2.4"
        fill="none"
      />
      <path
        d="M24 23c4-4 7 3 11-1s8 3 12-1"
        stroke="var(--ground)"
        stroke-width="2.4"
        fill="none"
      />
    </>
  ),
  streaks: () => (
    <>
      <Holes holes={EVEN.filter(([, cy]) => cy === 13 || cy === 34)} />
      <path d="M15 22c8-6 14 5 21 0s14 5 21-1" {...LINE} stroke-width="3.4" />
      <path d="M14 29c8-5 15 5 22 0s15 4 22 0" {...LINE} stroke-width="3.4" />
    </>
  ),
};

const HOLES: Readonly<Record<Shown<'holes'>, () => JSX.Element>> = {
  none: () => <Holes holes={EVEN} />,
  underCrust: () => (
    <>
      <path d="M17 19C22 9 50 9 55 19C48 16 24 16 17 19Z" {...SOLID} />
      <Holes holes={rows([24, 30, 35], 7, 1.4)} />
    </>
  ),
  throughout: () => <Holes holes={OPEN} />,
  byFilling: () => (
    <>
      <Holes holes={GAPS} />
      <Holes holes={FILLINGS} filled />
    </>
  ),
};

const BASE: Readonly<Record<Shown<'base'>, () => JSX.Element>> = {
  even: () => <Holes holes={EVEN} />,
  tight: () => (
    <>
      <Holes holes={EVEN.filter(([, cy]) => cy < 24)} />
      <path d="M9 29H63Q64 37 58 38H14Q8 37 9 29Z" {...SOLID} opacity="0.6" />
    </>
  ),
  dark: () => (
    <>
      <Holes holes={EVEN.filter(([, cy]) => cy < 32)} />
      <path d="M9 37H63V42H9Z" {...SOLID} />
    </>
  ),
};

const SPREAD: Readonly<Record<Shown<'spread'>, { readonly loaf: string; readonly more?: string }>> =
  {
    tall: { loaf: 'M15 39C8 20 20 5 36 5S64 20 57 39Z', more: 'M30 8C34 14 42 14 46 9' },
    spread: { loaf: 'M4 39C3 30 18 25 36 25S69 30 68 39Z', more: 'M24 28H48' },
    burst: {
      loaf: 'M12 39C7 20 20 8 36 8C50 8 58 14 59 22L54 25L66 26C69 31 66 37 60 39Z',
      more: 'M54 25C56 29 54 32 58 35M30 11C34 15 40 15 44 11',
    },
  };

const SOUR: Readonly<Record<Shown<'sour'>, string>> = {
  no: 'M36 13c-3-3 3-5 0-9',
  sour: 'M24 13l-3-3 5-3-4-4M36 12l-3-3 5-3-4-4M48 13l-3-3 5-3-4-4',
};

/** A low slice with what rises from it: one soft breath, or three sharp ones. */
const Smell = (props: { readonly sour: Shown<'sour'> }): JSX.Element => (
  <Frame>
    <path d="M8 38C5 24 18 18 36 18S67 24 64 38Q63 41 58 41H14Q9 41 8 38Z" {...PALE} />
    <path
      d="M8 38C5 24 18 18 36 18S67 24 64 38Q63 41 58 41H14Q9 41 8 38Z"
      {...LINE}
      stroke-width="2.6"
    />
    <path d={SOUR[props.sour]} {...LINE} stroke-width="2.2" />
  </Frame>
);

const Shape = (props: { readonly spread: Shown<'spread'> }): JSX.Element => (
  <Frame>
    <path d={SPREAD[props.spread].loaf} {...PALE} />
    <path d={SPREAD[props.spread].loaf} {...LINE} stroke-width="2.6" />
    <Show when={SPREAD[props.spread].more}>{(more) => <path d={more()} {...LINE} />}</Show>
    <path d="M2 41.5H70" {...LINE} />
  </Frame>
);

/** What a cut loaf may show of a sign, or a loaf that leaves its baker in doubt. Told apart without a colour. */
export function LoafPicture(props: {
  readonly sign: LoafSign;
  readonly shown: Shown | 'unsure';
}): JSX.Element {
  const { sign, shown } = props;
  if (shown === 'unsure') return <Unsure />;
  switch (sign) {
    case 'crumb':
      return <Slice>{CRUMB[shown as Shown<'crumb'>]()}</Slice>;
    case 'holes':
      return <Slice>{HOLES[shown as Shown<'holes'>]()}</Slice>;
    case 'base':
      return <Slice>{BASE[shown as Shown<'base'>]()}</Slice>;
    case 'crust':
      return <CrustPicture colour={shown as Shown<'crust'>} />;
    case 'spread':
      return <Shape spread={shown as Shown<'spread'>} />;
    case 'sour':
      return <Smell sour={shown as Shown<'sour'>} />;
  }
}
