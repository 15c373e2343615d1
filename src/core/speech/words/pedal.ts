import { inTongue } from '../tongue.ts';

/** A pedal, a clicker or any key that presses for floury hands. */
export const pedal = inTongue('pedal', 'pedal', {
  title: 'Pedal or clicker',
  detail: 'Press one here, then the pedal.',
  care: 'It opens no gate: hot, blade and machine stay by hand.',
  /** Headphones and speakers have keys too; what they do is not taught. */
  media: 'Headset keys',
  mediaIs: { on: 'On', off: 'Off' },
  mediaDetail: 'Play: done. Next: repeat. Back: hush.',
  none: 'None taught',
  taught: '{count} taught',
  noKey: 'No key',
  does: {
    done: 'That’s done',
    next: 'Next answer',
    takeBack: 'Take that back',
    sayAgain: 'Say that again',
    longer: 'How much longer?',
    hush: 'Hush please',
  },
  ask: 'Press the pedal once',
  for: 'For “{name}”.',
  refused: 'That key types or moves. Try another.',
  forget: 'No key for it',
  byHand: 'This opens by hand only.',
} as const);
