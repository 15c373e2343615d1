import { For, type JSX } from 'solid-js';

/* Drawings of what a dough shows, one camera angle: from the side. The words under a tile say it too. */

const LINE = { fill: 'none', stroke: 'currentColor', 'stroke-width': 2 } as const;

function Frame(props: { readonly children: JSX.Element }): JSX.Element {
  return (
    <svg viewBox="0 0 72 44" aria-hidden="true">
      {props.children}
    </svg>
  );
}

const Tub = (): JSX.Element => <path d="M18 3v38h36V3" {...LINE} />;

/** A tub with the mark it began at, and the dough that far above it. `percent` 0 to 100. */
export function RisePicture(props: { readonly percent: number }): JSX.Element {
  const top = (): number => 27 - (props.percent / 100) * 13;
  return (
    <Frame>
      <rect x="20" y={top()} width="32" height={40 - top()} fill="currentColor" opacity="0.35" />
      <path d={`M20 ${top()}h32`} {...LINE} />
      <path d="M10 27h8M54 27h8" {...LINE} stroke-width="3" />
      <Tub />
    </Frame>
  );
}

const EDGES = {
  flat: 'M20 20H52V40H20Z',
  domed: 'M20 24C26 10 46 10 52 24V40H20Z',
  fallen: 'M20 14C26 30 46 30 52 14V40H20Z',
} as const;

/** The dough's line against the wall: level, over it, or sunk. */
export function EdgePicture(props: { readonly edge: keyof typeof EDGES }): JSX.Element {
  return (
    <Frame>
      <path d={EDGES[props.edge]} fill="currentColor" opacity="0.35" />
      <path d={EDGES[props.edge]} {...LINE} />
      <Tub />
    </Frame>
  );
}

const BUBBLES = {
  none: [],
  some: [
    [27, 22, 2.4],
    [42, 30, 3],
    [33, 35, 2],
  ],
  many: [
    [26, 18, 2.6],
    [36, 16, 3.4],
    [46, 20, 2.4],
    [30, 26, 3.4],
    [42, 28, 4],
    [25, 35, 2.4],
    [35, 35, 2.6],
    [47, 36, 2.2],
  ],
} as const;

/** Bubbles seen through the wall. */
export function BubblesPicture(props: { readonly bubbles: keyof typeof BUBBLES }): JSX.Element {
  return (
    <Frame>
      <path d="M20 12h32" {...LINE} />
      <Tub />
      <For each={BUBBLES[props.bubbles]}>
        {([cx, cy, r]) => <circle cx={cx} cy={cy} r={r} {...LINE} />}
      </For>
    </Frame>
  );
}

const BASKET = 'M10 18C12 34 20 41 26 41H46C52 41 60 34 62 18';
const LOAVES = {
  none: 'M15 30C24 27 48 27 57 30',
  little: 'M13 26C22 20 50 20 59 26',
  grown: 'M10 19C18 5 54 5 62 19',
  unsure: 'M30 17c0-9 13-9 12-1 0 6-6 6-6 12M36 33v3',
} as const;

/** A loaf in its basket: low where it lay last night, a little up, or domed to the rim. */
export function GrowthPicture(props: { readonly grown: keyof typeof LOAVES }): JSX.Element {
  return (
    <Frame>
      <path d={LOAVES[props.grown]} {...LINE} />
      <path d={BASKET} {...LINE} />
    </Frame>
  );
}

const DENTS = {
  springs: { skin: 'M6 22h60', way: 'M36 40V28M31 33l5-5 5 5' },
  slow: { skin: 'M6 22h20c4 0 5 6 10 6s6-6 10-6h20', way: 'M36 42v-8M32 37l4-3 4 3' },
  stays: { skin: 'M6 22h18c4 0 4 16 12 16s8-16 12-16h18', way: '' },
  unsure: { skin: 'M6 22h14M52 22h14', way: 'M30 17c0-9 13-9 12-1 0 6-6 6-6 12M36 34v3' },
} as const;

/** The skin after a finger: level again, half way back, or a pit. */
export function PokePicture(props: { readonly dent: keyof typeof DENTS }): JSX.Element {
  return (
    <Frame>
      <path d={DENTS[props.dent].skin} {...LINE} />
      <path d={DENTS[props.dent].way} {...LINE} />
    </Frame>
  );
}

const HATCHES = {
  pale: [],
  golden: ['M20 38L36 12M34 39L50 13M48 38L58 22'],
  dark: [
    'M14 34L26 14M20 38L36 12M27 39L43 11M34 39L50 13M41 39L56 17M48 38L60 22',
    'M16 22L28 39M22 15L36 39M29 12L44 39M37 11L52 39M46 13L59 33',
  ],
} as const;

/** One loaf: blank, hatched once, hatched closely both ways; told apart without a colour. */
export function CrustPicture(props: { readonly colour: keyof typeof HATCHES }): JSX.Element {
  return (
    <Frame>
      <For each={HATCHES[props.colour]}>{(d) => <path d={d} {...LINE} stroke-width="1.6" />}</For>
      <path d="M10 38C6 20 22 10 36 10S66 20 62 38Z" {...LINE} />
    </Frame>
  );
}
