import { createSignal, type Accessor } from 'solid-js';
import type { Settings } from '../../machines/ports.ts';
import type { Ways } from '../screens/house.ts';

const NAME = 'ways';

/** What each way may be; the first stands where nothing else was chosen or can be read. */
const CHOICES = {
  theme: ['light', 'dark'],
  hands: ['right', 'left'],
  text: ['plain', 'bigger'],
  clock: ['24', '12'],
  heat: ['C', 'F'],
  weight: ['g', 'oz'],
  night: ['off', 'hours', 'dim'],
} as const satisfies { readonly [K in Exclude<keyof Ways, 'pxPerMm'>]: readonly Ways[K][] };

/** Pixels a millimetre that a screen can have: a wall's and a small telephone's. Judgement. */
export const PX_PER_MM = { least: 3, most: 12 } as const;

const isScale = (value: unknown): value is number =>
  typeof value === 'number' && value >= PX_PER_MM.least && value <= PX_PER_MM.most;

/** Ways as they were kept, by whatever version: what is unknown falls back by itself. */
export function readWays(kept: unknown): Ways {
  const found = (typeof kept === 'object' && kept !== null ? kept : {}) as Record<string, unknown>;
  const one = <T extends string>(name: string, choices: readonly [T, ...T[]]): T =>
    choices.find((choice) => choice === found[name]) ?? choices[0];
  return {
    theme: one('theme', CHOICES.theme),
    hands: one('hands', CHOICES.hands),
    text: one('text', CHOICES.text),
    clock: one('clock', CHOICES.clock),
    heat: one('heat', CHOICES.heat),
    weight: one('weight', CHOICES.weight),
    night: one('night', CHOICES.night),
    pxPerMm: isScale(found['pxPerMm']) ? found['pxPerMm'] : null,
  };
}

/** How things are shown on this tablet; written on the root, where the styles look for it. */
export async function openWays(
  settings: Settings,
  root: HTMLElement,
): Promise<{ readonly ways: Accessor<Ways>; choose(change: Partial<Ways>): void }> {
  const [ways, setWays] = createSignal(readWays(await settings.get(NAME).catch(() => null)));
  const show = ({ theme, hands, text }: Ways): void => {
    root.dataset['theme'] = theme;
    root.dataset['hands'] = hands;
    if (text === 'bigger') root.dataset['text'] = text;
    else delete root.dataset['text'];
  };
  show(ways());
  return {
    ways,
    choose(change) {
      setWays((old) => readWays({ ...old, ...change }));
      show(ways());
      void settings.set(NAME, ways()).catch(() => undefined);
    },
  };
}
