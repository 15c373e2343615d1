import {
  amount,
  check,
  fields,
  flag,
  id,
  instant,
  listOf,
  maybe,
  orNull,
  string,
  tableOf,
  text,
} from './checks.ts';
import { readReading } from './read-reading.ts';

const instants = tableOf(instant);
const place = {
  stage: id,
  marks: instants,
  entered: instants,
  byDue: flag,
  answers: tableOf(string),
  tasks: tableOf(fields({ called: orNull(instant), done: orNull(instant) })),
};

/** A reading by its kind and its number, whatever that is: rows of old kept any. */
const reading = check('a reading', (value) => readReading(value, '', false).reading !== null);

const bake = fields({
  ...place,
  start: id,
  loaves: maybe(listOf(id)),
  touches: amount,
  belief: fields({ mean: amount, sd: amount }),
  doubt: maybe(id),
  readings: tableOf(fields({ at: instant, reading })),
});

const oven = fields({
  ...place,
  vessel: text,
  waiting: listOf(id),
  soon: flag,
  out: listOf(id),
  lanes: maybe(listOf(id)),
  holds: maybe(tableOf(amount)),
  turns: maybe(tableOf(text)),
});

const lane = fields({ ...place, vessel: text, loaves: listOf(id) });

/** Where a whole kitchen stands: each field that is read of it, and its type. */
export const position = fields({
  now: instant,
  bakes: tableOf(bake),
  oven,
  lanes: tableOf(lane),
  attention: fields({
    heard: listOf(string),
    snoozed: tableOf(fields({ until: orNull(instant), times: amount })),
  }),
  timers: tableOf(fields({ name: string, until: instant, call: text })),
  starter: fields({
    name: maybe(string),
    kept: maybe(fields({ at: instant, grams: amount })),
    fed: maybe(fields({ at: instant, flour: amount, celsius: amount })),
    put: maybe(fields({ at: instant, where: id })),
    renewed: maybe(instant),
    signs: listOf(fields({ at: instant })),
    marks: instants,
  }),
});
