import { inTongue } from '../tongue.ts';

/** Set-up of the calls, from where the baker will be. */
export const soundCheck = inTongue('sound-check', 'soundCheck', {
  title: 'Sound check',
  detail: 'Go where you will be. Shut the door. Listen for three calls.',
  play: 'Play the calls',
  then: 'in ten seconds',
  again: 'Play them again',
  /** All three once, here, each with its name. */
  test: 'Test all calls',
  testing: 'Each call, then its name. Touch anywhere to stop.',
  noAlarm: 'It is a help, not an alarm. Set a second timer for every hot step.',
  ask: 'Did you hear all three?',
  /** What no page can know or mend. */
  limits: 'A shut door takes a lot of the sound. No page can read the volume.',
  mute: 'No sound can be made yet. Play them again.',
  answers: {
    yes: { label: 'I heard them', means: 'Calls reach you there' },
    no: { label: 'I did not', means: 'Calls may pass you by' },
    sightOnly: { label: 'Sight only', means: 'You look for yourself' },
  },
  results: { yes: 'Heard well', no: 'Not heard', sightOnly: 'Sight only' },
  means: {
    yes: 'Check again when the door, the tablet or its volume changes.',
    no: 'Turn the tablet up or open the door. Then play them again.',
    sightOnly: 'Look at the screen often. Calls still sound: do not count on them.',
  },
  result: '{name}, {date}',
  notDone: 'Not done yet',
} as const);
