import { inTongue } from '../tongue.ts';
import { BURN, HOT_IRON, MITTS, RATING, RING } from './care.ts';
import type { OvenStage } from '../../records/stage.ts';
import type { StageWords } from '../words.ts';

/**
 * Hot steps say who does them and where the others stand, before they say how.
 */
export const ovenWords: Readonly<Record<OvenStage, StageWords>> = inTongue('oven', 'ovenWords', {
  off: {
    headline: 'Leave the oven off',
    detail: 'No loaf is waiting for it.',
    slab: 'Go back',
    then: 'to the kitchen',
    spoken: 'The oven is off. No loaf is waiting for it.',
  },
  turnOn: {
    headline: 'Heat the oven, pot and lid in',
    detail: '{potHeat}, or as hot as it goes.',
    slab: 'Oven is on',
    then: 'then the pot heats up',
    spoken: '{potHeat}. Pot and lid in.',
    care: `${RATING} ${RING}`,
  },
  preheating: {
    headline: 'Let the pot get hot',
    detail: 'Hot at {time}. Loaves stay where they are.',
    slab: 'It’s hot now',
    then: 'then check the first loaf',
    spoken: '{time} is when the pot is hot. Loaves stay where they are.',
    care: 'The oven is hot. Children stay 1 m back.',
  },
  holding: {
    headline: 'Keep the oven hot',
    detail: 'The loaves come soon.',
    slab: 'Go back',
    then: 'to the loaves',
    spoken: 'The oven is hot. The loaves come soon.',
    care: 'The oven is hot. Children stay 1 m back.',
  },
  poke: {
    headline: 'Check the next loaf',
    detail: 'Press a floured finger 1 cm in. Watch the dent.',
    slab: 'I’ve looked',
    then: 'then choose what to do',
    spoken: 'One centimetre in, with a floured finger. Watch the dent.',
  },
  standing: {
    headline: 'Leave the loaf out',
    detail: 'On the counter. Check it again at {time}.',
    slab: 'Check it now',
    then: 'and say what you see',
    spoken: '{time} is the next check. Leave the loaf on the counter.',
  },
  before: {
    headline: 'Get ready for the hot pot',
    detail: 'One line at a time. Say how it really is.',
    slab: 'That’s done',
    then: 'then score the loaf',
    spoken: 'Get ready for the hot pot. Children, stand back.',
    care: RING,
  },
  score: {
    headline: 'Score the loaf',
    detail: 'Turn it out. One quick cut, 1 cm deep.',
    slab: 'It’s scored',
    then: 'then into the pot',
    spoken: 'One centimetre deep, one quick cut. Then cover the blade.',
    care: `Blade: cut away from your hand, then cover it. ${RING}`,
  },
  load: {
    headline: 'Load {pot}, lid on',
    detail: 'Lower it in, lid on, door shut. Oven to {bakeHeat}.',
    slab: 'It’s in',
    then: 'press when the door is shut',
    spoken: 'Lower it into {pot}, lid on, door shut. Children, stand back.',
    care: `${MITTS} ${RING}`,
  },
  // Common practice, no source: a flat bread two fingers thick, 20 to 25 minutes.
  tray: {
    headline: 'Bake this one flat',
    detail: 'Spread it in an oiled tray, on a free rack. Door shut.',
    slab: 'It’s in',
    then: 'press when the door is shut',
    spoken: 'Oiled tray, twenty to twenty-five minutes. Children, stand back.',
    care: `Plain dough is fine; unsure of a filling, throw it out. ${RING}`,
  },
  baking: {
    headline: 'Leave the bread to bake',
    detail: 'Every pot is full or heating up.',
    slab: 'Go back',
    then: 'to the loaves',
    spoken: 'The bread is baking. Leave the door shut.',
    care: 'The oven is hot. Children stay 1 m back.',
  },
  lidded: {
    headline: 'Leave the lid on',
    detail: 'Lid off at {time}. Have dry mitts ready.',
    slab: 'Lid is off',
    then: 'if it came off early',
    spoken: '{time}, and the lid comes off {pot}. Have dry mitts ready.',
    care: 'Both hands free? Children, stand back.',
  },
  lift: {
    headline: 'Lift the lid off {pot}',
    detail: 'Away from you: steam. Dry mitts, face back.',
    slab: 'Lid is off',
    then: 'press when the pot is down',
    spoken: 'Lift the lid off {pot}, away from you. Children, stand back.',
    care: 'Both hands free? Children, stand back.',
  },
  steaming: {
    headline: 'Leave the steam in',
    detail: 'Door shut. Steam out at {time}.',
    slab: 'Steam is out',
    then: 'if you let it out early',
    spoken: '{time} is when the steam goes out. Leave the door shut.',
    care: 'Both hands free? Children, stand back.',
  },
  vent: {
    headline: 'Let the steam out, face back',
    detail: 'Open away from you. Take the water tray out.',
    slab: 'Steam is out',
    then: 'press when your hands are free',
    spoken: 'Open the door away from you, steam. Take the water tray out.',
    care: 'Both hands free? Children, stand back.',
  },
  open: {
    headline: 'Let the crust colour',
    detail: 'Look at {time}. Golden, not black.',
    slab: 'Look now',
    then: 'and say what you see',
    spoken: '{time} is the next look. Golden, not black.',
    care: `${HOT_IRON} ${BURN}`,
  },
  judge: {
    headline: 'Look at the crust',
    detail: 'Colour first, then base, then core.',
    slab: 'I’ve looked',
    then: 'then choose what to do',
    spoken: 'Look at the crust. Colour first, then base, then core.',
    care: `${MITTS} ${RING}`,
  },
  unload: {
    headline: 'Take the loaf out',
    detail: 'Pot down first. Then the loaf to the rack.',
    slab: 'It’s out',
    then: 'press when your hands are free',
    spoken: 'Take the loaf out of {pot}, pot down first. Children, stand back.',
    care: `${MITTS} ${RING}`,
  },
  recover: {
    headline: 'Let {pot} reheat',
    detail: 'Pot and lid back in. Hot at {time}.',
    slab: 'It’s hot now',
    then: 'then check the next loaf',
    spoken: '{time} is when {pot} is hot again. Pot and lid in.',
    care: `${HOT_IRON} ${BURN}`,
  },
  turnOff: {
    headline: 'Turn the oven off',
    detail: 'The pot stays inside to cool.',
    slab: 'Oven is off',
    then: 'the last load is out',
    spoken: 'Turn the oven off. The pot stays inside to cool.',
    care: 'The pot stays hot for a long time. Children stay 1 m back.',
  },
});

/** What is done otherwise with loaves that went over: they hardly open any more. */
export const overWords = inTongue('oven', 'overWords', {
  score: {
    detail: 'It has gone over. One shallow cut, half as deep.',
    spoken: 'One shallow cut, half as deep. Then cover the blade.',
  },
} satisfies Partial<Record<OvenStage, Partial<StageWords>>>);
