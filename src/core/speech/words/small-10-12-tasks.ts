import type { SmallStep, SmallWords } from '../../small/small-words.ts';
import { inTongue } from '../tongue.ts';

/** Told to a child of 10 to 12 at the tasks of a wait. */
export const small1012Tasks = inTongue('small-10-12-tasks', 'small1012Tasks', {
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
    task: 'Sit far away. Write when you smell toast.',
    praise: 'You wrote when you smelled toast.',
  },
  drain: {
    act: 'Drain the filling',
    say: 'Wet filling can tear the dough.',
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
    say: 'Flour goes right down in each ring.',
    task: 'Dust each basket. Then wash your hands.',
    praise: 'You dusted the baskets.',
  },
  grease: {
    act: 'Grease the tins',
    say: 'The corners need it the most.',
    task: 'Brush each corner. Then wash your hands.',
    praise: 'You greased each corner.',
  },
  shelf: {
    act: 'Make room in the fridge',
    say: 'Air needs to get all round each loaf.',
    task: 'Move the light things to one side.',
    praise: 'You moved the light things.',
  },
  parchment: {
    act: 'Watch from your chair',
    say: 'A grown-up cuts the paper to size.',
    task: 'Sit far away. Read out the paper’s box.',
    praise: 'You read out the box.',
  },
  kettle: {
    act: 'Listen from far away',
    say: 'A grown-up boils the water.',
    task: 'Sit far away. Write down how it sounds.',
    praise: 'You wrote how it sounds.',
  },
  fetch: {
    act: 'See the next loaf come',
    say: 'A grown-up gets the next cold loaf.',
    task: 'Write how many loaves stay cold.',
    praise: 'You wrote how many stay cold.',
  },
  rack: {
    act: 'Watch the rack come out',
    say: 'A grown-up puts the rack out.',
    task: 'Sit far away. Draw how the loaves fit.',
    praise: 'You drew how they fit.',
  },
  tidyMix: {
    act: 'Clear the table',
    say: 'Dough comes off by itself in cold water.',
    task: 'Soak the small bowls. Then wash your hands.',
    praise: 'You put the bowls to soak.',
  },
  tidyBulk: {
    act: 'Clear the table',
    say: 'No dough goes down the sink.',
    task: 'Wipe each corner. Then wash your hands.',
    praise: 'You wiped each corner.',
  },
  tidyBench: {
    act: 'Clear the table',
    say: 'Scraps go first, and then the wet cloth.',
    task: 'Gather the scraps. Then wash your hands.',
    praise: 'You gathered the scraps.',
  },
  rise45: {
    act: 'Look at the tub',
    say: 'A look at the mark tells us more.',
    task: 'Read the mark from the side.',
    praise: 'You read the mark.',
  },
  rise70: {
    act: 'Look at the tub',
    say: 'We look again to see it grow.',
    task: 'Say if it rose since the last look.',
    praise: 'You said if it rose.',
  },
  rise85: {
    act: 'Look at the tub',
    say: 'We see if it is big enough.',
    task: 'Sketch the tub and all its marks.',
    praise: 'You sketched the tub’s marks.',
  },
} satisfies Partial<Record<SmallStep, SmallWords>>);
