/** What fills the templates of a big bake. */
export const BIG_BAKE = {
  minutes: 75,
  grams: 1450,
  keepBack: 30,
  loaves: 24,
  load: 11,
  loads: 12,
  touch: 3,
  touches: 4,
  pot: 'the middle pot',
  name: 'second water',
};

/** Both scales, each with its clock. */
export const SYSTEMS = [
  { units: { heat: 'C', weight: 'g' }, time: '19:15', until: '19:50' },
  { units: { heat: 'F', weight: 'oz' }, time: '12:15\u00a0pm', until: '12:50\u00a0pm' },
] as const;
