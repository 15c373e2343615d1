import { inTongue } from '../tongue.ts';

/** The ear's panel: what can be heard, said and seen of the tablet itself. */
export const ear = inTongue('kitchen', 'ear', {
  sound: {
    armed: 'Sound is on',
    locked: 'Tap to arm sound',
    lost: 'Sound lost: tap here',
    unavailable: 'No sound here',
  },
  /** Where a call may be put off, the ear gives way to it: what is to be known of the sound all the same. */
  mute: { locked: 'Sound off', unavailable: 'No sound' },
  awake: {
    held: 'Screen stays on',
    lost: 'Screen may go dark',
    unavailable: 'Keep the screen on yourself',
  },
  /** While something rings that nobody can have heard: on the ear, and on the big press. */
  unheard: 'Sound off: touch',
  untilTouch: 'Sound is off until you touch',
} as const);

/** What a page on a tablet cannot promise. Said at set-up and kept within reach. */
export const noPromise = inTongue('kitchen', 'noPromise', {
  title: 'This is no alarm to rely on',
  text: 'It may be silent when the tablet is locked, turned low, or shows another app. Set a second timer for every hot step.',
  agree: 'I’ll set a second timer',
} as const);

/** Before the night: two things the page cannot do by itself. */
export const night = inTongue('kitchen', 'night', {
  plug: 'Plug me in.',
  phone: 'Set your phone for {time}.',
  why: 'A page cannot wake a sleeping tablet.',
} as const);

/** One page holds the kitchen. */
export const twoPages = inTongue('kitchen', 'twoPages', {
  headline: 'Another page has the kitchen',
  detail: 'This one only shows it.',
  free: 'The other page has gone.',
  take: 'Take the kitchen here',
} as const);

/** A new version is offered, never taken by itself. */
export const update = inTongue('kitchen', 'update', {
  offer: 'A new version is here.',
  detail: 'Your bake goes on where it stands.',
  take: 'Change to it',
  later: 'Later',
} as const);

/** A cool loaf on the scale, against the dough that it was. */
export const coolLoaf = inTongue('kitchen', 'coolLoaf', {
  lost: 'It lost {grams} in the oven: {percent} %. Leave warm bags open.',
} as const);

/** The weight of a piece against the wanted one. */
export const divideAdvice = inTongue('kitchen', 'divideAdvice', {
  heavy: {
    text: '{grams} too heavy. Move it to the next piece.',
    spoken: '{grams} too heavy. Move it to the next piece.',
  },
  light: {
    text: '{grams} too light. Add from the next piece.',
    spoken: '{grams} too light. Add from the next piece.',
  },
  right: {
    text: '{grams}: just right. Lay it aside.',
    spoken: '{grams}, just right. Lay it aside.',
  },
} as const);
