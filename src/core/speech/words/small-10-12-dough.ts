import type { SmallStep, SmallWords } from '../../small/small-words.ts';
import { inTongue } from '../tongue.ts';

/** Told to a child of 10 to 12 while the dough is made: from the plan to loaves that are shaped. */
export const small1012Dough = inTongue('small-10-12-dough', 'small1012Dough', {
  'read.plan': {
    act: 'Read the plan through',
    say: 'The plan tells when hands are needed.',
    task: 'Find the steps that need two people.',
    praise: 'You found the steps for two.',
  },
  'read.list': {
    act: 'Check what we have',
    say: 'Each thing needs to be here and clean.',
    task: 'Read the list. Then wash your hands.',
    praise: 'You read each line.',
  },
  'levain.feed': {
    act: 'Feed the starter',
    say: 'Each line is weighed into a clean jar.',
    task: 'Stir until smooth. Then wash your hands.',
    praise: 'You stirred the starter smooth.',
  },
  'levain.ripening': {
    act: 'Let the starter grow',
    say: 'Yeast makes gas, and so the starter grows.',
    task: 'Sketch the bubbles along the glass.',
    praise: 'You sketched the bubbles.',
  },
  'levain.look': {
    act: 'Look at the starter',
    say: 'A domed top and many bubbles look ripe.',
    task: 'Compare the top with the mark.',
    praise: 'You compared it with the mark.',
  },
  'levain.ripe': {
    act: 'Keep some starter back',
    say: 'This part lives on in the fridge.',
    task: 'Write the date. Then wash your hands.',
    praise: 'You wrote the date.',
  },
  'mix.weigh': {
    act: 'Weigh flour and water',
    say: 'The scale starts at zero for each thing.',
    task: 'Check each weight. Then wash your hands.',
    praise: 'You checked each weight.',
  },
  'mix.first': {
    act: 'Mix the dough',
    say: 'Mix until no dry flour is left.',
    task: 'Scrape the sides down. Then wash your hands.',
    praise: 'You scraped the sides down.',
  },
  'mix.rest': {
    act: 'Let the dough rest',
    say: 'Flour drinks the water while it rests.',
    task: 'Wipe the table. Then wash your hands.',
    praise: 'You wiped the table.',
  },
  'mix.salt': {
    act: 'Add the salt',
    say: 'Salt goes on the dough, then the water.',
    task: 'Read the salt’s weight. Then wash your hands.',
    praise: 'You read the salt’s weight.',
  },
  'mix.work': {
    act: 'Work the salt in',
    say: 'Stop when nothing slips or feels gritty.',
    task: 'Pinch and turn. Then wash your hands.',
    praise: 'You worked the salt in.',
  },
  'mix.temperature': {
    act: 'Read how warm it is',
    say: 'A warm dough grows more than a cold one.',
    task: 'Read the number, then write it down.',
    praise: 'You wrote the number down.',
  },
  'bulk.between': {
    act: 'Let the dough grow',
    say: 'The dough needs rest between its folds.',
    task: 'Compare the dough with its last mark.',
    praise: 'You compared the marks.',
  },
  'bulk.fold': {
    act: 'Fold the dough',
    say: 'Lift, stretch and fold, then turn the tub.',
    task: 'Fold and turn. Then wash your hands.',
    praise: 'You folded and turned the dough.',
  },
  'bulk.spread': {
    act: 'Spread the dough thin',
    say: 'Stop where the dough pulls back.',
    task: 'Spread your side. Then wash your hands.',
    praise: 'You spread your side thin.',
  },
  'bulk.scatter': {
    act: 'Scatter the filling',
    say: 'Leave the edge bare so it can close.',
    task: 'Scatter with a spoon. Then wash your hands.',
    praise: 'You scattered with the spoon.',
  },
  'bulk.roll': {
    act: 'Roll the dough up',
    say: 'Fold it in three, then roll it up.',
    task: 'Roll your side. Then wash your hands.',
    praise: 'You rolled up your side.',
  },
  'bulk.proving': {
    act: 'Let the dough rise',
    say: 'Gas makes the dough rise and wobble.',
    task: 'Draw where the light falls on the wall.',
    praise: 'You drew where the light falls.',
  },
  'bulk.look': {
    act: 'Look at the dough',
    say: 'Look for a dome, bubbles and a wobble.',
    task: 'Name each sign that you see.',
    praise: 'You named the signs you saw.',
  },
  'shape.divide': {
    act: 'Weigh each piece',
    say: 'A grown-up cuts the dough in equal parts.',
    task: 'Note each weight. Then wash your hands.',
    praise: 'You noted each weight.',
  },
  'shape.preshape': {
    act: 'Round each piece',
    say: 'Use little flour and keep the top smooth.',
    task: 'Round a piece. Then wash your hands.',
    praise: 'You rounded a piece.',
  },
  'shape.benchRest': {
    act: 'Let the pieces rest',
    say: 'Rest lets the dough stretch again.',
    task: 'Design a mark for your own small loaf.',
    praise: 'You designed your loaf’s mark.',
  },
  'shape.finalShape': {
    act: 'Shape each loaf',
    say: 'Fold, roll up tight and pinch the seam.',
    task: 'Shape your small loaf. Then wash your hands.',
    praise: 'You shaped your small loaf.',
  },
  'shape.basket': {
    act: 'Lay loaves in baskets',
    say: 'The seam looks up, and a cloth covers it.',
    task: 'Cover the baskets. Then wash your hands.',
    praise: 'You covered the baskets.',
  },
  'shape.scoop': {
    act: 'Spoon dough into tins',
    say: 'Wet hands make a smooth top.',
    task: 'Smooth the tops. Then wash your hands.',
    praise: 'You smoothed the tops.',
  },
} satisfies Partial<Record<SmallStep, SmallWords>>);
