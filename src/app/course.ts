import { advance } from '../../machines/kitchen/advance.ts';
import { wanted } from '../../machines/kitchen/dues.ts';
import { nextCall } from '../../machines/kitchen/next-call.ts';

/** What time brings a kitchen: what falls due, and when the next of it will. */
export const course = { advance, wanted, nextCall } as const;
export type Course = typeof course;
