/** The stages that call where time, not a press, led into them, and how: as the machines have it. */
export const CALL_STAGES: Readonly<Record<string, 'look' | 'act' | 'hot'>> = {
  'levain.look': 'look',
  'mix.salt': 'act',
  'bulk.fold': 'act',
  'bulk.spread': 'act',
  'bulk.look': 'look',
  'shape.finalShape': 'act',
  'proof.toFridge': 'act',
  'proof.look': 'look',
  'proof.poke': 'look',
  'cool.handOver': 'look',
  turnOn: 'act',
  poke: 'act',
  lift: 'hot',
  vent: 'hot',
  judge: 'hot',
};
