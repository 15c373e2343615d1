import { inTongue } from '../tongue.ts';

/** The Kitchen screen: what it bakes with, and the tablet itself. */
export const kitchenPage = inTongue('kitchen-page', 'kitchenPage', {
  title: 'Kitchen',
  edge: 'Kitchen: set up once, change at will',
  places: 'Pots and tins',
  placesValue: '{count} a load',
  placesDetail: 'How many in one load?',
  pots: 'Pots with a lid',
  tins: 'Tins',
  stones: 'Places on the stone',
  made: 'What are the pots made of?',
  pot: 'Pot {count}',
  notSaid: 'Not said',
  materials: { bareIron: 'Bare iron', enamel: 'Enamel', clay: 'Clay', glass: 'Glass' },
  notHot: 'No pot here may be loaded hot.',
  saved: 'Last: {date}',
  neverSaved: 'Never: the log is only here',
  promise: [
    'The tablet is silent when it is off, muted or asleep.',
    'Keep it plugged in: a flat battery ends the calls.',
    'It is a help, not an alarm. Set your phone too.',
  ],
  promiseTitle: 'What a tablet cannot promise',
} as const);
