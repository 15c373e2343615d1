import type { SmallStep, SmallWords } from '../../small/small-words.ts';
import { inTongue } from '../tongue.ts';

/** Told to a child of 4 to 6 at the tasks of a wait. */
export const small46Tasks = inTongue('small-4-6-tasks', 'small46Tasks', {
  soak: {
    act: 'See the seeds get wet',
    say: 'The seeds have a bath in water.',
    task: 'Look for the seeds that swim.',
    praise: 'You looked for seeds that swim.',
  },
  takeOut: {
    act: 'See the cheese come out',
    say: 'The cheese warms up on the table.',
    task: 'Say what shape the cheese is.',
    praise: 'You said the cheese’s shape.',
  },
  toast: {
    act: 'Watch from far away',
    say: 'A grown-up toasts in the hot oven.',
    task: 'Sit far away. Say when you smell toast.',
    praise: 'You said when you smelled toast.',
  },
  drain: {
    act: 'See the water drip off',
    say: 'Water drips off the filling.',
    task: 'Count the drops you can hear.',
    praise: 'You counted the drops you heard.',
  },
  cut: {
    act: 'Watch from your chair',
    say: 'A grown-up has the sharp knife.',
    task: 'Sit far away. Count each chop you hear.',
    praise: 'You counted each chop.',
  },
  coat: {
    act: 'See the filling get flour',
    say: 'Flour keeps the filling in its place.',
    task: 'Wiggle your fingers like falling snow.',
    praise: 'You made snow with your fingers.',
  },
  bench: {
    act: 'See the table get wet',
    say: 'Water keeps the dough from sticking.',
    task: 'Bring a dry towel for the baker.',
    praise: 'You brought a dry towel.',
  },
  baskets: {
    act: 'See the baskets get dusted',
    say: 'Flour keeps the loaves from sticking.',
    task: 'Count the baskets in a row.',
    praise: 'You counted the baskets.',
  },
  grease: {
    act: 'See the tins get shiny',
    say: 'Fat helps the bread slip out.',
    task: 'Count the corners of one tin.',
    praise: 'You counted the corners.',
  },
  shelf: {
    act: 'Make room in the fridge',
    say: 'The loaves need a clear shelf.',
    task: 'Show where the loaves can sleep.',
    praise: 'You showed where the loaves sleep.',
  },
  parchment: {
    act: 'Watch from your chair',
    say: 'A grown-up cuts the paper to size.',
    task: 'Sit far away. Draw a round loaf.',
    praise: 'You sat and drew a round loaf.',
  },
  kettle: {
    act: 'Listen from far away',
    say: 'A grown-up boils the water.',
    task: 'Sit far away. Listen for the water.',
    praise: 'You listened for the water.',
  },
  fetch: {
    act: 'See the next loaf come',
    say: 'A grown-up gets the next cold loaf.',
    task: 'Think of a name for the loaf.',
    praise: 'You thought of a name.',
  },
  rack: {
    act: 'Watch the rack come out',
    say: 'A grown-up puts the rack out.',
    task: 'Sit far away. Draw lines like the rack.',
    praise: 'You drew lines like the rack.',
  },
  tidyMix: {
    act: 'See the bowls soak',
    say: 'The bowls soak in cold water.',
    task: 'Fold a clean towel in two.',
    praise: 'You folded a towel.',
  },
  tidyBulk: {
    act: 'See the table get clean',
    say: 'The sticky table gets clean again.',
    task: 'Look for flour spots. Point them out.',
    praise: 'You pointed out the spots.',
  },
  tidyBench: {
    act: 'See the table get clean',
    say: 'All the scraps go away first.',
    task: 'Line up the dry spoons by size.',
    praise: 'You lined up the spoons.',
  },
  rise45: {
    act: 'Look at the tub',
    say: 'The dough climbs up the tub.',
    task: 'Find the mark by the dough’s top.',
    praise: 'You found the dough’s mark.',
  },
  rise70: {
    act: 'Look at the tub',
    say: 'We see how high it is now.',
    task: 'Count the marks up to the dough.',
    praise: 'You counted up to the dough.',
  },
  rise85: {
    act: 'Look at the tub',
    say: 'We see if it is big enough.',
    task: 'Draw how high the dough is.',
    praise: 'You drew how high it was.',
  },
} satisfies Partial<Record<SmallStep, SmallWords>>);
