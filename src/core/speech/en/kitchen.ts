/** The ear's panel: what can be heard, said and seen of the tablet itself. */
export const ear = {
  none: 'No ear yet: press the big one',
  shut: 'Ear shut',
  open: 'Ear open',
  sound: { armed: 'Sound is on', locked: 'Tap to arm sound', unavailable: 'No sound here' },
  awake: {
    held: 'Screen stays on',
    lost: 'Screen may go dark',
    unavailable: 'Keep the screen on yourself',
  },
  ringing: 'Touch anywhere to hush it',
} as const;

/** Set-up of the calls, from where the baker will be. */
export const soundCheck = {
  title: 'Sound check',
  detail: 'Walk to where you will be. Shut the door.',
  play: 'Play the {name} call',
  ask: 'Did you hear it there?',
  heard: 'I heard it',
  faint: 'Only faintly',
  notHeard: 'Not heard',
  names: { look: 'look', act: 'act', hot: 'hot' },
  counted: 'It sounds after a count of three, and grows louder.',
  again: 'Play it again',
  sightOnly: 'Sight only',
  results: {
    yes: 'Heard well',
    faint: 'Heard faintly',
    no: 'Not heard',
    sightOnly: 'Sight only',
  },
  result: '{name}, {date}',
  notDone: 'Not done yet',
  noAlarm: 'It is a help, not an alarm. Set a second timer for every hot step.',
  louder: 'Turn the tablet up, then play it again.',
  door: 'A shut door takes much of the sound.',
} as const;

/** What a page on a tablet cannot promise. Said at set-up and kept within reach. */
export const noPromise = {
  title: 'This is no alarm to rely on',
  text: 'It may be silent when the tablet is locked, turned low, or shows another app. Set a second timer for every hot step.',
  agree: 'I’ll set a second timer',
} as const;

/** Before the night: two things the page cannot do by itself. */
export const night = {
  plug: 'Plug me in.',
  phone: 'Set your phone for {time}.',
  why: 'A page cannot wake a sleeping tablet.',
} as const;

/** One page holds the kitchen. */
export const twoPages = {
  headline: 'Another page has the kitchen',
  detail: 'This one only shows it.',
  free: 'The other page has gone.',
  take: 'Take the kitchen here',
} as const;

/** A new version is offered, never taken by itself. */
export const update = {
  offer: 'A new version is here.',
  detail: 'Your bake goes on where it stands.',
  take: 'Change to it',
  later: 'Later',
} as const;

/** The weight of a piece against the wanted one. */
export const divideAdvice = {
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
} as const;
