import { inTongue } from '../tongue.ts';
import type { RiseCourse } from '../../day/rise-course.ts';

/** The chart of a bake's rise against time. The loaf's index is told as a share of ready. */
export const rise = inTongue('rise', 'rise', {
  say: 'Say this chart',
  bowl: 'Rise in the bowl',
  jar: 'Rise in a jar',
  numbers: 'As a table',
  chart: 'As a chart',
  none: 'Nothing rises here just now.',
  title: { dough: 'How far it has risen', loaf: 'How far the loaf is' },
  goal: { dough: 'goal {percent}', loaf: 'ready' },
  likely: 'likely',
  inJar: 'in the jar',
  now: 'now',
  band: 'Four of five end up in the hatched band.',
  /** Direct labels: what was read, and in what. */
  tubMark: '{percent}',
  atLeast: '{percent} or more',
  jarMark: 'jar {percent}',
  growth: { none: 'not grown', little: 'a little', grown: 'grown', unsure: 'looked' },
  dent: { springs: 'springs', slow: 'slow', stays: 'stays', unsure: 'looked' },
  table: {
    title: 'The same in numbers',
    time: 'Time',
    read: 'Read',
    likely: 'Likely',
    span: 'Between',
  },
  span: '{least} to {most}',
  over: 'over {percent}',
  alt: {
    dough: 'Rise against time. Likely {percent} now, goal {goal}. Readings: {count}.',
    loaf: 'Readiness against time. Likely {percent} of ready now. Looks: {count}.',
  },
  spoken: {
    dough: '{percent} now, about. Ready from {time} to {until}.',
    loaf: '{percent} of ready now, about. Ready from {time} to {until}.',
    /** The window reaches into another day, or there is none: the hour alone would not say which. */
    doughLong: '{percent} now, about. Ready in about {minutes}.',
    loafLong: '{percent} of ready now, about. Ready in about {minutes}.',
    doughThere: '{percent} now, about. It may be ready: look.',
    loafThere: '{percent} of ready now, about. It may be ready: look.',
  },
} as const satisfies Readonly<
  Record<string, string | Readonly<Record<string, string>>> & {
    readonly title: Readonly<Record<RiseCourse['of'], string>>;
  }
>);
