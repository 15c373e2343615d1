import type { SmallStep, SmallWords } from '../../small/small-words.ts';
import { inTongue } from '../tongue.ts';

/** Told to a child of 7 to 9 at the tasks of a wait. */
export const small79Tasks = inTongue('small-7-9-tasks', 'small79Tasks', {
  soak: {
    act: 'Soak the seeds',
    say: 'Seeds drink water and get soft.',
    task: 'Spoon the seeds in. Then wash your hands.',
    praise: 'You spooned the seeds in.',
  },
  takeOut: {
    act: 'Take the cheese out',
    say: 'Hard cheese warms up on the table.',
    task: 'Read the packet. Then wash your hands.',
    praise: 'You read the packet.',
  },
  toast: {
    act: 'Watch from far away',
    say: 'A grown-up toasts in the hot oven.',
    task: 'Sit far away. Say when you smell toast.',
    praise: 'You said when you smelled toast.',
  },
  drain: {
    act: 'Drain the filling',
    say: 'Dry filling stays where it is put.',
    task: 'Count the drops. Then wash your hands.',
    praise: 'You counted the drops.',
  },
  cut: {
    act: 'Watch from your chair',
    say: 'A grown-up has the sharp knife.',
    task: 'Sit far away. Draw a pea its true size.',
    praise: 'You drew a pea.',
  },
  coat: {
    act: 'Dust the filling',
    say: 'Flour keeps the filling in its place.',
    task: 'Dust with a spoon. Then wash your hands.',
    praise: 'You dusted the filling.',
  },
  bench: {
    act: 'Wet the table',
    say: 'Dough slides on a thin film of water.',
    task: 'Wet the table. Then wash your hands.',
    praise: 'You wet the table.',
  },
  baskets: {
    act: 'Dust the baskets',
    say: 'Flour keeps the loaves from sticking.',
    task: 'Dust one basket. Then wash your hands.',
    praise: 'You dusted a basket.',
  },
  grease: {
    act: 'Grease the tins',
    say: 'Fat helps the bread slip out.',
    task: 'Brush each corner. Then wash your hands.',
    praise: 'You greased each corner.',
  },
  shelf: {
    act: 'Make room in the fridge',
    say: 'The loaves need a clear shelf.',
    task: 'Take light things off the shelf.',
    praise: 'You cleared the light things.',
  },
  parchment: {
    act: 'Watch from your chair',
    say: 'A grown-up cuts the paper to size.',
    task: 'Sit far away. Draw a loaf on paper.',
    praise: 'You drew a loaf.',
  },
  kettle: {
    act: 'Listen from far away',
    say: 'A grown-up boils the water.',
    task: 'Sit far away. Say when you hear bubbles.',
    praise: 'You said when it bubbled.',
  },
  fetch: {
    act: 'See the next loaf come',
    say: 'A grown-up gets the next cold loaf.',
    task: 'Say how many loaves stay cold.',
    praise: 'You counted the cold loaves.',
  },
  rack: {
    act: 'Watch the rack come out',
    say: 'A grown-up puts the rack out.',
    task: 'Sit far away. Guess how many loaves fit.',
    praise: 'You guessed how many fit.',
  },
  tidyMix: {
    act: 'Clear the table',
    say: 'The bowls soak in cold water.',
    task: 'Soak the spoons. Then wash your hands.',
    praise: 'You put the spoons to soak.',
  },
  tidyBulk: {
    act: 'Clear the table',
    say: 'A wet cloth takes the last flour off.',
    task: 'Wipe each corner. Then wash your hands.',
    praise: 'You wiped each corner.',
  },
  tidyBench: {
    act: 'Clear the table',
    say: 'All the scraps go away first.',
    task: 'Gather the scraps. Then wash your hands.',
    praise: 'You gathered the scraps.',
  },
  rise45: {
    act: 'Look at the tub',
    say: 'The marks show how far it rose.',
    task: 'Count the marks from the bottom up.',
    praise: 'You counted the marks.',
  },
  rise70: {
    act: 'Look at the tub',
    say: 'We look again to see it grow.',
    task: 'Look straight at the mark. Read it out.',
    praise: 'You read the mark.',
  },
  rise85: {
    act: 'Look at the tub',
    say: 'We see if it is big enough.',
    task: 'Draw the tub with all its marks.',
    praise: 'You drew the tub’s marks.',
  },
} satisfies Partial<Record<SmallStep, SmallWords>>);
