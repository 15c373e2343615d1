import { inEnglish, twinned } from './tongue.ts';
import { awayPage } from './words/day.ts';

const WHATS = ['asleep', 'work', 'out'] as const;

/** The English words by which hours away are kept: they mean the same on every tablet. */
export const awayKeptAs = (what: (typeof WHATS)[number]): string => inEnglish(() => awayPage[what]);

/** What is offered for hours away: by what each is kept, and what it is called in the tongue that stands. */
export const awayWhats = () =>
  WHATS.map((what) => ({ value: awayKeptAs(what), label: awayPage[what] }));

/**
 * What hours away are called in the tongue that stands; a kitchen's own words stay as they are.
 *
 * @example showAway('asleep') // in German: 'Schlaf'
 */
export const showAway = (name: string): string =>
  twinned(() => awayWhats().find(({ value }) => value === name)?.label ?? name);
