import { inTongue } from '../tongue.ts';
import type { TurnedOut } from '../../log/turned-out.ts';

/** The list of all bakes, and how one is found in it. */
export const logList = inTongue('log-list', 'logList', {
  one: '1 bake',
  many: '{count} bakes',
  some: '{n} of {count} bakes',
  none: 'Nothing baked yet',
  noneDetail: 'Each bake comes here by itself, from its first press on.',
  hidden: 'All bakes are hidden',
  hiddenDetail: 'Press Find to show them again. Nothing is lost.',
  nothing: 'No bake is like that',
  nothingDetail: 'Try fewer letters, or show all of them.',
  list: 'Bakes',
  search: 'Search',
  newer: 'Newer',
  older: 'Older',
  find: 'Find',
  showAll: 'Show all',
  mine: 'All my bakes',
  loaf: '1 loaf',
  loaves: '{count} loaves',
  hiddenOne: 'Hidden',
} as const);

/** By what bakes are found. */
export const logFind = inTongue('log-list', 'logFind', {
  title: 'Which bakes?',
  month: 'Month',
  formula: 'Bread',
  tag: 'Tag',
  turned: 'How it was',
  hidden: 'Hidden bakes',
  shown: 'Shown',
  notShown: 'Not shown',
  any: 'Any',
  more: 'More',
  first: 'First ones',
  whichMonth: 'Which month?',
  whichFormula: 'Which bread?',
  whichTag: 'Which tag?',
  whichTurned: 'How was it?',
} as const);

/** How a bake turned out: one word beside its mark. */
export const turnedWords: Readonly<Record<TurnedOut, string>> = inTongue(
  'log-list',
  'turnedWords',
  {
    good: 'Good',
    under: 'Under',
    over: 'Over',
    dark: 'Dark',
    pale: 'Pale',
    done: 'Done',
    early: 'Early',
    open: 'Open',
  },
);

/** The same where there is room to say it. */
export const turnedChoices: Readonly<Record<TurnedOut, string>> = inTongue(
  'log-list',
  'turnedChoices',
  {
    good: 'Good',
    under: 'Under',
    over: 'Over',
    dark: 'Crust too dark',
    pale: 'Crust too pale',
    done: 'Nothing said',
    early: 'Ended early',
    open: 'Still open',
  },
);
