import type { SmallStep, SmallWords } from '../../small/small-words.ts';
import { inTongue } from '../tongue.ts';

/** Told to a child of 7 to 9 while the dough is made: from the plan to loaves that are shaped. */
export const small79Dough = inTongue('small-7-9-dough', 'small79Dough', {
  'read.plan': {
    act: 'Read the bread plan',
    say: 'The plan shows each step of the bread.',
    task: 'Read the first step to the baker.',
    praise: 'You read the first step aloud.',
  },
  'read.list': {
    act: 'Check what we need',
    say: 'All things are here before we start.',
    task: 'Name each thing. Then wash your hands.',
    praise: 'You named each thing.',
  },
  'levain.feed': {
    act: 'Feed the starter',
    say: 'Flour and water are food for the starter.',
    task: 'Stir the jar. Then wash your hands.',
    praise: 'You stirred the starter.',
  },
  'levain.ripening': {
    act: 'Let the starter grow',
    say: 'The starter makes bubbles as it grows.',
    task: 'Draw the jar and its mark.',
    praise: 'You drew the jar and its mark.',
  },
  'levain.look': {
    act: 'Look at the starter',
    say: 'Bubbles and a dome can show it is ready.',
    task: 'Count the big bubbles on one side.',
    praise: 'You counted the big bubbles.',
  },
  'levain.ripe': {
    act: 'Keep some starter back',
    say: 'This bit of starter makes the next bread.',
    task: 'Write a label. Then wash your hands.',
    praise: 'You wrote the jar’s label.',
  },
  'mix.weigh': {
    act: 'Weigh flour and water',
    say: 'The scale starts at zero for each thing.',
    task: 'Read each number. Then wash your hands.',
    praise: 'You read each number.',
  },
  'mix.first': {
    act: 'Mix the dough',
    say: 'Mix until no dry flour is left.',
    task: 'Mix with one hand. Then wash your hands.',
    praise: 'You mixed the dry flour in.',
  },
  'mix.rest': {
    act: 'Let the dough rest',
    say: 'Rest makes the dough soft and smooth.',
    task: 'Wipe the table. Then wash your hands.',
    praise: 'You wiped the table.',
  },
  'mix.salt': {
    act: 'Add the salt',
    say: 'Salt goes on the dough, then the water.',
    task: 'Sprinkle the salt. Then wash your hands.',
    praise: 'You sprinkled the salt.',
  },
  'mix.work': {
    act: 'Work the salt in',
    say: 'Pinch and turn until no grains are left.',
    task: 'Pinch the dough. Then wash your hands.',
    praise: 'You pinched the salt in.',
  },
  'mix.temperature': {
    act: 'Read how warm it is',
    say: 'A warm dough grows more than a cold one.',
    task: 'Read the number out to the baker.',
    praise: 'You read the number out.',
  },
  'bulk.between': {
    act: 'Let the dough grow',
    say: 'Small bubbles make the dough grow.',
    task: 'See which mark the dough has reached.',
    praise: 'You found the dough’s mark.',
  },
  'bulk.fold': {
    act: 'Fold the dough',
    say: 'Pull one side up and fold it over.',
    task: 'Count your folds. Then wash your hands.',
    praise: 'You counted and folded the dough.',
  },
  'bulk.spread': {
    act: 'Spread the dough thin',
    say: 'Pull the dough softly until it is thin.',
    task: 'Pull one corner. Then wash your hands.',
    praise: 'You pulled one corner thin.',
  },
  'bulk.scatter': {
    act: 'Scatter the filling',
    say: 'Leave the edge bare so it can close.',
    task: 'Scatter with a spoon. Then wash your hands.',
    praise: 'You scattered with the spoon.',
  },
  'bulk.roll': {
    act: 'Roll the dough up',
    say: 'The filling hides inside the roll.',
    task: 'Roll your side. Then wash your hands.',
    praise: 'You rolled up your side.',
  },
  'bulk.proving': {
    act: 'Let the dough rise',
    say: 'The dough rises as gas fills it.',
    task: 'Trace a shadow that falls on your paper.',
    praise: 'You traced a shadow.',
  },
  'bulk.look': {
    act: 'Look at the dough',
    say: 'A round top and bubbles are good signs.',
    task: 'Tell the baker three things you see.',
    praise: 'You named three things you saw.',
  },
  'shape.divide': {
    act: 'Weigh each piece',
    say: 'A grown-up cuts the dough in equal parts.',
    task: 'Read each weight. Then wash your hands.',
    praise: 'You read each weight.',
  },
  'shape.preshape': {
    act: 'Round each piece',
    say: 'A loose ball is the first shape.',
    task: 'Round one piece. Then wash your hands.',
    praise: 'You rounded one piece.',
  },
  'shape.benchRest': {
    act: 'Let the pieces rest',
    say: 'Rest makes the pieces easy to shape.',
    task: 'Choose your loaf’s mark and draw it.',
    praise: 'You chose your loaf’s mark.',
  },
  'shape.finalShape': {
    act: 'Shape each loaf',
    say: 'Roll it tight so it stands up tall.',
    task: 'Shape your small loaf. Then wash your hands.',
    praise: 'You shaped your small loaf.',
  },
  'shape.basket': {
    act: 'Lay loaves in baskets',
    say: 'The seam side looks up at you.',
    task: 'Cover the baskets. Then wash your hands.',
    praise: 'You covered the baskets.',
  },
  'shape.scoop': {
    act: 'Spoon dough into tins',
    say: 'This dough is too soft to shape.',
    task: 'Smooth one top. Then wash your hands.',
    praise: 'You smoothed one top.',
  },
} satisfies Partial<Record<SmallStep, SmallWords>>);
