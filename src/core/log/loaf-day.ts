import { coldDoubt } from '../clock/proof-index.ts';
import type { Metres } from '../oven/boiling.ts';
import { coreTarget } from '../oven/core-target.ts';
import type { Celsius, Hours, Minutes } from '../units.ts';
import type { DayFact, LoafCause, Shown } from './loaf-names.ts';
import { eachCause, likelyTo, type Likely } from './loaf-signs.ts';

/** What really happened to the loaf that day. All that is not known is left out. */
export interface LoafDay {
  /** Rise at the end of the bulk and its doubt, % and % points; `wanted` as the formula has it. */
  readonly rise?: { readonly percent: number; readonly doubt: number; readonly wanted?: number };
  /** Proof index when it went into the oven, and its sd; left out, the clock's own in the cold. */
  readonly q?: number;
  readonly qDoubt?: number;
  readonly coldHours?: Hours;
  readonly doughCelsius?: Celsius;
  /** The last poke, and whether the loaf was cold. */
  readonly poke?: { readonly dent: 'springs' | 'slow' | 'stays'; readonly cold: boolean };
  readonly core?: Celsius;
  readonly height?: Metres;
  /** Its crust at the open oven; what is answered of the cut loaf stands above it. */
  readonly crust?: Shown<'crust'>;
  /** How long it baked, and the fewest that its formula has. */
  readonly baked?: { readonly minutes: Minutes; readonly least: Minutes };
  readonly cooledMinutes?: Minutes;
  readonly filled?: boolean;
}

/** A wanted rise where the formula has none, %. Common practice, no source. */
const WANTED = 75;
/** No fact of the day is less than a tenth as likely under any cause: signs beat it. Judgement. */
const LEAST = 0.1;
/** Rise as a share of the wanted one, proof index and dough, °C: where each cause has its middle. Judgement. */
const MIDDLE = {
  rise: { under: 0.5, short: 0.8, over: 1.6, else: 1.05, doubt: 0.2 },
  proof: { under: 0.6, short: 0.8, over: 1.5, else: 1.05, doubt: 0.15 },
  dough: { under: 21, short: 22.5, over: 28, else: 25, doubt: 3 },
} as const;
type Dents = Readonly<Record<NonNullable<LoafDay['poke']>['dent'], number>>;
/** Of a hundred warm loaves with this cause, how many spring, come back slowly, or stay. Judgement. */
const DENT = {
  under: { springs: 80, slow: 15, stays: 5 },
  short: { springs: 50, slow: 45, stays: 5 },
  over: { springs: 5, slow: 25, stays: 70 },
  else: { springs: 20, slow: 65, stays: 15 },
} as const;
/** Loaves cool one to two hours before they are cut. Common practice, no source. */
const COOLS = { least: 60, most: 120 } as const;
/** How likely each was cut sooner, between and later. Judgement. */
const COOLED = { cutHot: [0.85, 0.12, 0.03], else: [0.25, 0.35, 0.4] } as const;
/** How likely a core below the window, and a bake below its least time, is. Judgement. */
const LOW_CORE = { notBaked: 0.75, ovenLow: 0.5, cutHot: 0.12, else: 0.12 } as const;
const SHORT_BAKE = { notBaked: 0.6, else: 0.12 } as const;

/** These follow from each other: they weigh as one fact together, or three would outshout the loaf. */
const ONE_STORY: readonly DayFact[] = ['rise', 'proof', 'dough'];

/** The number of a cause, or what all others have. */
const of = <T>(numbers: Readonly<Partial<Record<LoafCause, T>>> & { readonly else: T }) => {
  const known: Readonly<Partial<Record<LoafCause, T>>> = numbers;
  return (cause: LoafCause): T => known[cause] ?? numbers.else;
};

/** A measure about each cause's middle: a bell with a floor. */
function bell(measure: keyof typeof MIDDLE, got: number, doubt: number): Likely {
  const { doubt: own, ...middles } = MIDDLE[measure];
  const middle = of<number>(middles);
  const sd = Math.hypot(own, doubt);
  return eachCause(
    (cause) => LEAST + (1 - LEAST) * Math.exp(-0.5 * ((got - middle(cause)) / sd) ** 2),
  );
}

const yesOrNo = (yes: boolean, chance: (cause: LoafCause) => number): Likely =>
  eachCause((cause) => (yes ? chance(cause) : 1 - chance(cause)));

/** A cold loaf's dent says little whatever the loaf is: half of it is chance. */
const dentSays = ({ dent, cold }: NonNullable<LoafDay['poke']>): Likely =>
  eachCause((cause) => {
    const share = of<Dents>(DENT)(cause)[dent] / 100;
    return cold ? 0.5 / 3 + share / 2 : share;
  });

const cooledSays = (minutes: Minutes): Likely => {
  const column = minutes < COOLS.least ? 0 : minutes < COOLS.most ? 1 : 2;
  return eachCause((cause) => of<readonly number[]>(COOLED)(cause)[column] as number);
};

/**
 * What the day's facts say of each cause, fact by fact. Numbers that are none are left out.
 * Source: which fact goes with which cause is common practice, no source; the numbers are judgement.
 *
 * @example
 * dayLikely({ cooledMinutes: 15 }).map(({ fact }) => fact) // → ['cooled']
 */
export function dayLikely(day: LoafDay): { readonly fact: DayFact; readonly says: Likely }[] {
  const {
    rise,
    q,
    qDoubt,
    coldHours = 0,
    doughCelsius,
    poke,
    core,
    height = 0,
    crust,
    baked,
  } = day;
  const told: [DayFact, Likely | null][] = [
    ['rise', rise ? risen(rise) : null],
    ['proof', known(q) ? bell('proof', q, known(qDoubt) ? qDoubt : coldDoubt(coldHours)) : null],
    ['dough', known(doughCelsius) ? bell('dough', doughCelsius, 0) : null],
    ['poke', poke ? dentSays(poke) : null],
    ['core', known(core) ? yesOrNo(core < coreTarget(height).least, of<number>(LOW_CORE)) : null],
    ['crust', crust ? likelyTo('crust', crust) : null],
    ['baked', baked ? yesOrNo(baked.minutes < baked.least, of<number>(SHORT_BAKE)) : null],
    ['cooled', known(day.cooledMinutes) ? cooledSays(day.cooledMinutes) : null],
  ];
  const facts = told.flatMap(([fact, says]) => (says === null ? [] : [{ fact, says }]));
  const same = facts.filter(({ fact }) => ONE_STORY.includes(fact)).length;
  return facts.map(({ fact, says }) => {
    const share = ONE_STORY.includes(fact) ? 1 / same : 1;
    return { fact, says: eachCause((cause) => says[cause] ** share) };
  });
}

const known = (number: number | undefined): number is number =>
  number !== undefined && Number.isFinite(number);

const risen = ({ percent, doubt, wanted = WANTED }: NonNullable<LoafDay['rise']>): Likely | null =>
  known(percent) && known(doubt) && wanted > 0
    ? bell('rise', percent / wanted, doubt / wanted)
    : null;
