import { inTongue } from '../tongue.ts';

/** The Log: what its pages share. */
export const log = inTongue('log', 'log', {
  title: 'Log',
  edge: 'Bakes of the past',
  opening: 'The log is being opened.',
  closed: 'The log cannot be opened',
  closedDetail: 'Nothing is lost. Open this page again.',
  gone: 'This bake is not in the log any more.',
} as const);
