import { createSignal, type Accessor } from 'solid-js';
import type { Settings } from '../../machines/ports.ts';
import type { Stop } from '../../machines/ports.ts';
import { AGES } from '../core/small/ages.ts';
import { HAND_MARKS } from '../core/small/marks.ts';
import { TONGUES, type Tongue } from '../core/speech/tongue.ts';
import { PX_PER_MM, type Ways } from '../screens/house.ts';

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
  small: ['off', ...AGES],
  learner: ['off', 'on'],
} as const satisfies {
  readonly [K in Exclude<keyof Ways, 'pxPerMm' | 'tongue' | 'met' | 'marks'>]: readonly Ways[K][];
};

const isScale = (value: unknown): value is number =>
  typeof value === 'number' && value >= PX_PER_MM.least && value <= PX_PER_MM.most;

const areNames = (value: unknown): value is readonly string[] =>
  Array.isArray(value) && value.every((name) => typeof name === 'string');

/** Each once, in the order they were picked. */
const marksOf = (kept: unknown): Ways['marks'] => {
  const all = Array.isArray(kept) ? (kept as readonly unknown[]) : [];
  return HAND_MARKS.filter((mark) => all.includes(mark)).toSorted(
    (a, b) => all.indexOf(a) - all.indexOf(b),
  );
};

/** Ways as they were kept, by whatever version: what is unknown falls back by itself, a tongue to `own`. */
export function readWays(kept: unknown, own: Tongue = 'en'): Ways {
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
    tongue: TONGUES.find((tongue) => tongue === found['tongue']) ?? own,
    small: one('small', CHOICES.small),
    learner: one('learner', CHOICES.learner),
    met: areNames(found['met']) ? found['met'] : [],
    marks: marksOf(found['marks']),
    pxPerMm: isScale(found['pxPerMm']) ? found['pxPerMm'] : null,
  };
}

/** Ten in the evening to six, on the tablet's own clock. Judgement. */
export const isNight = (hour: number): boolean => hour >= 22 || hour < 6;
/** The night may begin while nobody touches anything. */
const LOOK_EVERY_MS = 60_000;

/** What openWays asks of the world. */
export interface WaysWorld {
  /** The hour of the day, 0 to 23. */
  hour(): number;
  every(ms: number, then: () => void): Stop;
  /** The tablet's own tongue, until one is chosen. */
  readonly tongue?: Tongue;
  /** Opens the page anew. */
  reload?(): void;
}

/** How things are shown on this tablet; written on the root, where the styles look for it. */
export async function openWays(
  settings: Settings,
  root: HTMLElement,
  { hour, every, tongue = 'en', reload = () => undefined }: WaysWorld,
): Promise<{ readonly ways: Accessor<Ways>; choose(change: Partial<Ways>): void }> {
  const [ways, setWays] = createSignal(
    readWays(await settings.get(NAME).catch(() => null), tongue),
  );
  const show = ({ theme, hands, text, night, pxPerMm }: Ways): void => {
    const dim = night === 'dim' || (night === 'hours' && isNight(hour()));
    root.dataset['theme'] = dim ? 'dim' : theme;
    root.dataset['hands'] = hands;
    if (text === 'bigger') root.dataset['text'] = text;
    else delete root.dataset['text'];
    if (pxPerMm === null) {
      delete root.dataset['held'];
      root.style.removeProperty('--px-per-mm');
    } else {
      root.dataset['held'] = '';
      root.style.setProperty('--px-per-mm', String(pxPerMm));
    }
  };
  show(ways());
  every(LOOK_EVERY_MS, () => show(ways()));
  return {
    ways,
    choose(change) {
      const before = ways().tongue;
      setWays((old) => readWays({ ...old, ...change }));
      show(ways());
      // Words are read in one tongue from the first on: the page comes up anew in the other.
      const then = ways().tongue === before ? () => undefined : reload;
      void settings.set(NAME, ways()).then(then, () => undefined);
    },
  };
}
