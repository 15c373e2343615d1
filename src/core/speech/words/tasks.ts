import { inTongue } from '../tongue.ts';
import type { Task } from '../../records/task.ts';

/** A task that a wait asks of free hands. */
export interface TaskWords {
  /** On a tile: the state once it is done, never assent. */
  readonly done: string;
  /** What a call is about, as it follows the call word. */
  readonly subject: string;
  readonly headline: string;
  readonly detail: string;
  readonly care?: string;
}

/** One early look helps little, two halve the doubt: the same is asked three times in a bulk. */
const HOW_FAR: TaskWords = {
  done: 'Say how far',
  subject: 'how far it has risen',
  headline: 'See how far it has risen',
  detail: 'One look at the mark on the tub tells me more.',
};

/** The same of `fetch` where loaves go in together: in tins, or on a stone. */
export const fetchLoad = inTongue('tasks', 'fetchLoad', {
  headline: 'Take {loaves} out of the fridge',
  spoken: '{loaves} out of the fridge',
} as const);

/** Shown of `fetch` where what is fetched is all that waits; nothing more is said. */
const fetchLast = 'No other loaf waits for the oven.';

/** Beside a filling's task, where what is made ready may not stand about: it goes in cold, at the shaping. */
const spoilsToo = 'What spoils goes straight back into the fridge.';

export const tasks: Readonly<Record<Task, TaskWords>> = inTongue('tasks', 'tasks', {
  rise45: HOW_FAR,
  rise70: HOW_FAR,
  rise85: HOW_FAR,
  soak: {
    done: 'Seeds are in water',
    subject: 'the seeds to soak',
    headline: 'Put the seeds in water',
    detail: 'Just covered. Over two hours: in the fridge.',
  },
  takeOut: {
    done: 'Cheese is out',
    subject: 'the cheese comes out',
    headline: 'Take the hard cheese out',
    detail: 'It loses its chill. What spoils stays in the fridge.',
    care: 'Fresh cheese, meat and cooked food stay in the fridge.',
  },
  toast: {
    done: 'Toasted, and cooling',
    subject: 'the nuts and seeds',
    headline: 'Toast the nuts and seeds',
    detail: 'Ten minutes, golden. Then they cool on the tray.',
    care: 'The tray is hot: dry mitts, children 1 m back. Nuts and sesame are allergens.',
  },
  drain: {
    done: 'Drained and dry',
    subject: 'drain the filling',
    headline: 'Drain the filling and dry it',
    detail: 'Wet filling slides and tears the sheet.',
  },
  cut: {
    done: 'All cut',
    subject: 'cut the filling',
    headline: 'Cut the filling in even pieces',
    detail: 'As big as a pea. A grown-up has the knife.',
    care: 'Blade: cut away from your hand.',
  },
  coat: {
    done: 'Dusted with flour',
    subject: 'dust the filling',
    headline: 'Dust the filling with flour',
    detail: 'A thin coat: then it does not slide.',
  },
  bench: {
    done: 'Bench is wet',
    subject: 'wet the bench',
    headline: 'Wet the bench for the sheet',
    detail: 'A thin film of water, wide enough for all of it.',
  },
  baskets: {
    done: 'Baskets are dusted',
    subject: 'dust the baskets',
    headline: 'Dust the baskets with flour',
    detail: 'Rice flour, right into the grooves.',
  },
  grease: {
    done: 'Tins are greased',
    subject: 'grease the tins',
    headline: 'Grease the tins',
    detail: 'Corners too. Butter is milk: name it.',
  },
  shelf: {
    done: 'Shelf is clear',
    subject: 'clear a shelf',
    headline: 'Clear a fridge shelf',
    detail: 'Flat, and air all round the loaves.',
  },
  parchment: {
    done: 'Parchment is cut',
    subject: 'cut the parchment',
    headline: 'Cut the parchment to size',
    detail: 'Much of it takes only {parchmentHeat}. Look at the box.',
  },
  kettle: {
    done: 'Water boils',
    subject: 'boil the water',
    headline: 'Boil water for the steam',
    detail: 'One cup. It goes in the tray with the loaf.',
    care: 'Boiling water: a grown-up does this. Children stay 1 m back.',
  },
  fetch: {
    done: 'Out of the fridge',
    subject: 'the next cold loaf',
    headline: 'Take loaf {load} out of the fridge',
    detail: 'The other loaves stay cold.',
  },
  rack: {
    done: 'Rack is out',
    subject: 'the cooling rack',
    headline: 'Put the cooling rack out',
    detail: 'Near the oven, clear of cloth and hands.',
  },
  tidyMix: {
    done: 'Bowls are soaking',
    subject: 'clear the bench',
    headline: 'Clear the bench',
    detail: 'Bowls in cold water: dough comes off by itself.',
  },
  tidyBulk: {
    done: 'Bench is clean',
    subject: 'clear the bench',
    headline: 'Clear the bench',
    detail: 'Scrape first, then a wet cloth. No dough down the sink.',
  },
  tidyBench: {
    done: 'Scraps are away',
    subject: 'clear the bench',
    headline: 'Clear the bench',
    detail: 'Scraper and scale wiped, flour at hand.',
  },
});

/** What follows a task's press, and how it is passed over. */
export const taskPress = inTongue('tasks', 'taskPress', {
  then: 'the wait goes on',
  leave: 'Skip it',
  byPicture: 'by picture',
  /** On the bench; over the page, or under More, of what will call later. */
  ahead: 'Do ahead: {count}',
  aheadTitle: 'What you can do ahead',
  calls: '{name}. It calls at {time}.',
  aheadNone: 'Nothing is left to do ahead.',
} as const);

/** Of these, what is said by itself. */
export const tasksLines = inTongue('tasks', 'tasksLines', {
  fetchLast,
  spoilsToo,
});
