import type { Notice } from '../formula/notice.ts';
import type { Celsius, Minutes } from '../units.ts';
import type { Metres } from './boiling.ts';
import { coreSays } from './core-spots.ts';

/** What was seen of a loaf at the open oven. Null, or no core: not looked at. */
export interface CrustSigns {
  readonly colour: 'pale' | 'golden' | 'dark' | null;
  /** Knocked on below: sounds hollow, or dull and soft; or it is dark. */
  readonly base: 'hollow' | 'dull' | 'dark' | null;
  /** Cores, °C, one a spot. */
  readonly cores: readonly Celsius[];
  /** Minutes since the lid came off, and the fewest that this loaf's formula has. */
  readonly open: Minutes;
  readonly least: Minutes;
  readonly filled: boolean;
  readonly height?: Metres;
}

/**
 * `out`: it is baked. `fiveMore`: back in, look again. `outOfPotOnRack`: its base is done and the loaf
 * is not, so that it bakes on without the iron. `trayBelowNextTime`: out now, and a tray on the shelf
 * below the next time.
 */
export type CrustVerdict = 'out' | 'fiveMore' | 'outOfPotOnRack' | 'trayBelowNextTime';

/**
 * Why. `early`: below its least time, whatever else says done. `tent`: cover it, the crust is dark.
 * `oneSign`: nothing says what is inside. `coreReady` never decides, it only agrees.
 */
export type CrustReason =
  | 'pale'
  | 'golden'
  | 'dark'
  | 'baseHollow'
  | 'baseDull'
  | 'baseDark'
  | 'coreReady'
  | 'coreLow'
  | 'early'
  | 'tent'
  | 'oneSign';

export interface CrustJudged {
  readonly verdict: CrustVerdict;
  readonly reasons: readonly CrustReason[];
  /** What to ask in words, at most one: another spot of the core, a number again, or a sign. */
  readonly ask: Notice | null;
}

const BASES = { hollow: 'baseHollow', dull: 'baseDull', dark: 'baseDark' } as const;

/**
 * Whether a loaf comes out of the oven. Colour, base, core and the least time together; never a core
 * alone: one loaf of 60 minutes had 99 °C a quarter of an hour early and was gummy.
 * - Pale stays in, whatever the core says. Dark comes out before it burns, unless core or base say
 *   that it is raw inside: then it bakes on, covered.
 * - Golden comes out when its time is up and base or core say it is baked, and neither says it is not.
 * - A dark base leaves the iron: onto the rack where the loaf is not done, else a tray below next time.
 *
 * Aim for golden: acrylamide forms where it blackens (EU 2017/2158). It says nothing of food safety.
 * Source: signs common practice, no source; the core's window and the gummy loaf seen in print; how
 * they are weighed is judgement. Hands beat it: every answer may be given against it.
 *
 * @example
 * judgeCrust({ colour: 'golden', base: 'hollow', cores: [], open: 22, least: 20, filled: false }).verdict // → 'out'
 * judgeCrust({ colour: 'golden', base: null, cores: [99], open: 5, least: 20, filled: false }).verdict // → 'fiveMore'
 */
export function judgeCrust(signs: CrustSigns): CrustJudged {
  const { colour, base, cores, open, least } = signs;
  const { says: core, ask: askCore } = coreSays(cores, signs);
  const raw = core === 'low' || base === 'dull';
  const baked = !raw && (base === 'hollow' || core === 'ready');
  const early = !(open >= least);
  const done = colour === 'dark' ? !raw : colour === 'golden' && baked && !early;
  const oneSign = !raw && !baked && colour !== 'pale';
  const reasons: CrustReason[] = [
    ...(colour === null ? [] : [colour]),
    ...(base === null ? [] : [BASES[base]]),
    ...(core === null ? [] : [core === 'ready' ? ('coreReady' as const) : ('coreLow' as const)]),
    ...(early ? ['early' as const] : []),
    ...(oneSign ? ['oneSign' as const] : []),
    ...(colour === 'dark' && !done ? ['tent' as const] : []),
  ];
  const missing = colour === null ? 'askColour' : oneSign && base === null ? 'askBase' : null;
  const ask = askCore ?? (missing === null || done ? null : { key: missing, values: {} });
  const dark = base === 'dark';
  if (done) return { verdict: dark ? 'trayBelowNextTime' : 'out', reasons, ask };
  return { verdict: dark ? 'outOfPotOnRack' : 'fiveMore', reasons, ask };
}
