import { inTongue } from '../tongue.ts';
import type { CrustVerdict } from '../../oven/judge-crust.ts';

/** What may be done with a loaf at the open oven. */
export type CrustAct = 'crustReady' | 'crustNotYet' | 'crustOnRack' | 'crustOver';

/** Label on the slab or a tile, and what follows when it is pressed. */
export const crustActs: Readonly<
  Record<CrustAct, { readonly label: string; readonly then: string }>
> = inTongue('crust', 'crustActs', {
  crustReady: { label: 'Take it out', then: 'then to the rack' },
  crustNotYet: { label: '5 more minutes', then: 'then look again' },
  crustOnRack: { label: 'Out of the pot', then: 'on the bare rack, 5 minutes' },
  crustOver: { label: 'Too dark: out', then: 'then to the rack' },
});

/** A loaf whose core foretells when to look again. `count`: minutes. */
export const crustMore = inTongue('crust', 'crustMore', {
  label: '{count} more minutes',
  then: 'then probe it again',
} as const);

/** Why a loaf stays in: the first of these that holds. */
export type CrustWhy = 'pale' | 'tent' | 'raw' | 'early' | 'unsure';

/** What the signs say together; the baker may always do otherwise. */
export const crust = inTongue('crust', 'crust', {
  headline: 'Choose for the crust',
  because: {
    out: 'Golden and done: take it out.',
    dark: 'Dark enough: take it out now.',
    trayBelowNextTime: 'Dark below: out now. Next time: tray under, rack up.',
    outOfPotOnRack: 'Dark below, not done. Onto the bare rack.',
    /** It is in no pot, or out of it already. */
    onRack: 'Dark below, not done. Five more minutes.',
  } satisfies Partial<Record<CrustVerdict | 'dark' | 'onRack', string>>,
  stays: {
    pale: 'Still pale. Five more minutes.',
    tent: 'Dark, but raw inside. Cover it loosely.',
    raw: 'Raw inside. Five more minutes.',
    early: 'Too early. Five more minutes.',
    unsure: 'The signs say too little. Five more minutes.',
  } satisfies Record<CrustWhy, string>,
  /** Its core was low, and says for how long: as it is shown, its unit once, and said. */
  low: 'Core {got} of {crumbHeat}. About {minutes} more.',
  more: { raw: 'Raw inside. About {minutes} more.', pale: 'Still pale. About {minutes} more.' },
  /** One more sign, or a number again; by the key of what is asked. */
  asks: {
    askColour: 'Look at the colour too.',
    askBase: 'Knock on its base.',
    coreSecond: 'Probe again, clear of the filling.',
    coreThird: 'Probe a third spot.',
    coreFahrenheit: 'Probe its middle again.',
    coreNotCrumb: 'Probe its middle again.',
  } as Readonly<Record<string, string>>,
} as const);
