import { inTongue } from '../tongue.ts';
import type { StageWords } from '../words.ts';

export const read = inTongue('read', 'read', {
  'read.plan': {
    headline: 'Read it through',
    detail: 'See what it needs, and when it needs you.',
    slab: 'I’ve read it',
    then: 'then check what you have',
    spoken: 'Read it through. See when it needs you.',
  },
  'read.list': {
    headline: 'Check what you have',
    detail: 'One line at a time. Say how it really is.',
    slab: 'That’s done',
    then: 'then feed the starter',
    spoken: 'Check what you have. Say how each thing really is.',
  },
} satisfies Record<string, StageWords>);
