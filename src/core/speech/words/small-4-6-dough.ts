import type { SmallStep, SmallWords } from '../../small/small-words.ts';
import { inTongue } from '../tongue.ts';

/** Told to a child of 4 to 6 while the dough is made: from the plan to loaves that are shaped. */
export const small46Dough = inTongue('small-4-6-dough', 'small46Dough', {
  'read.plan': {
    act: 'Look at the bread plan',
    say: 'Today we make bread.',
    task: 'Point to the pictures. Say what you see.',
    praise: 'You looked at each picture.',
  },
  'read.list': {
    act: 'Look for what we need',
    say: 'We need all these things for the bread.',
    task: 'Find the spoon, then find the towel.',
    praise: 'You found the spoon and the towel.',
  },
  'levain.feed': {
    act: 'See the starter get food',
    say: 'Flour and water feed the starter.',
    task: 'Count each scoop that goes in the jar.',
    praise: 'You counted each scoop.',
  },
  'levain.ripening': {
    act: 'Let the starter grow',
    say: 'The starter needs time to grow bubbles.',
    task: 'Look at the jar. Find the mark.',
    praise: 'You found the mark on the jar.',
  },
  'levain.look': {
    act: 'Look at the starter',
    say: 'Bubbles tell us that the starter is awake.',
    task: 'Count the bubbles you can see.',
    praise: 'You counted the bubbles.',
  },
  'levain.ripe': {
    act: 'See some starter kept',
    say: 'We keep some starter for the next bread.',
    task: 'Choose a colour for the jar’s name.',
    praise: 'You chose a colour for the jar.',
  },
  'mix.weigh': {
    act: 'See the flour weighed',
    say: 'Flour, water and starter go in the bowl.',
    task: 'Say the numbers you know on the scale.',
    praise: 'You said the numbers on the scale.',
  },
  'mix.first': {
    act: 'Watch the dough begin',
    say: 'Flour and water turn to dough.',
    task: 'Count each turn of the baker’s hand.',
    praise: 'You counted each turn.',
  },
  'mix.rest': {
    act: 'Let the dough rest',
    say: 'The dough has a nap under its cloth.',
    task: 'Draw the dough under its cloth.',
    praise: 'You drew the dough.',
  },
  'mix.salt': {
    act: 'See the salt go in',
    say: 'Salt goes on the dough, then the water.',
    task: 'Count the last drops of water.',
    praise: 'You counted the drops.',
  },
  'mix.work': {
    act: 'See the salt worked in',
    say: 'The salt hides all through the dough.',
    task: 'Clap once for each pinch you see.',
    praise: 'You clapped for each pinch.',
  },
  'mix.temperature': {
    act: 'See how warm it is',
    say: 'The dough shows us how warm it is.',
    task: 'Say each number you see.',
    praise: 'You said each number you saw.',
  },
  'bulk.between': {
    act: 'Let the dough grow',
    say: 'The dough grows slowly in its tub.',
    task: 'Count the marks on the tub.',
    praise: 'You counted the marks on the tub.',
  },
  'bulk.fold': {
    act: 'See the dough folded',
    say: 'The dough is pulled up and folded over.',
    task: 'Count each fold out loud.',
    praise: 'You counted each fold.',
  },
  'bulk.spread': {
    act: 'See the dough spread thin',
    say: 'The dough gets thin like a blanket.',
    task: 'Show with your arms how wide it is.',
    praise: 'You showed how wide it was.',
  },
  'bulk.scatter': {
    act: 'See the filling go on',
    say: 'The filling falls like rain.',
    task: 'Count the spoons of filling.',
    praise: 'You counted the spoons of filling.',
  },
  'bulk.roll': {
    act: 'See the dough rolled up',
    say: 'The dough rolls up with the filling inside.',
    task: 'Roll a dry towel the same way.',
    praise: 'You rolled up a towel.',
  },
  'bulk.proving': {
    act: 'Let the dough rise',
    say: 'The dough gets big and soft.',
    task: 'See where your shadow falls on the wall.',
    praise: 'You watched your shadow on the wall.',
  },
  'bulk.look': {
    act: 'Look at the dough',
    say: 'We look at how big the dough is.',
    task: 'Point at the top of the dough.',
    praise: 'You pointed at the top.',
  },
  'shape.divide': {
    act: 'See the dough shared out',
    say: 'The dough is shared, piece by piece.',
    task: 'Count the pieces as they come.',
    praise: 'You counted each piece.',
  },
  'shape.preshape': {
    act: 'Watch the balls get round',
    say: 'Each piece turns into a round ball.',
    task: 'Draw a ring for each ball.',
    praise: 'You drew a ring for each ball.',
  },
  'shape.benchRest': {
    act: 'Let the balls rest',
    say: 'The balls rest under a cloth.',
    task: 'Choose a mark for your own small loaf.',
    praise: 'You chose a mark for your loaf.',
  },
  'shape.finalShape': {
    act: 'Watch the loaves get shaped',
    say: 'Each loaf is rolled up tight.',
    task: 'Press the big button when all are shaped.',
    praise: 'You pressed when all were shaped.',
  },
  'shape.basket': {
    act: 'See the loaves tucked in',
    say: 'Each loaf gets its own bed.',
    task: 'Count the beds, then count the loaves.',
    praise: 'You counted the beds and the loaves.',
  },
  'shape.scoop': {
    act: 'See the tins get filled',
    say: 'This soft dough goes in by spoon.',
    task: 'Count each spoon that fills a tin.',
    praise: 'You counted each spoon.',
  },
} satisfies Partial<Record<SmallStep, SmallWords>>);
