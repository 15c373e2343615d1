import {
  check,
  fields,
  flag,
  id,
  listOf,
  maybe,
  number,
  orNull,
  string,
  tableOf,
  text,
} from './checks.ts';
import { readReading } from './read-reading.ts';

const instants = tableOf(number);
const place = {
  stage: id,
  marks: instants,
  entered: instants,
  byDue: flag,
  answers: tableOf(string),
  tasks: tableOf(fields({ called: orNull(number), done: orNull(number) })),
};

/** A reading by its kind and its number, whatever that is: rows of old kept any. */
const reading = check('a reading', (value) => readReading(value, '', false).reading !== null);

const bake = fields({
  ...place,
  start: id,
  loaves: maybe(listOf(id)),
  touches: number,
  belief: fields({ mean: number, sd: number }),
  doubt: maybe(id),
  readings: tableOf(fields({ at: number, reading })),
});

const oven = fields({
  ...place,
  vessel: text,
  waiting: listOf(id),
  soon: flag,
  out: listOf(id),
  lanes: maybe(listOf(id)),
  holds: maybe(tableOf(number)),
  turns: maybe(tableOf(text)),
});

const lane = fields({ ...place, vessel: text, loaves: listOf(id) });

/** Where a whole kitchen stands: each field that is read of it, and its type. */
export const position = fields({
  now: number,
  bakes: tableOf(bake),
  oven,
  lanes: tableOf(lane),
  attention: fields({
    heard: listOf(string),
    snoozed: tableOf(fields({ until: orNull(number), times: number })),
  }),
  timers: tableOf(fields({ name: string, until: number, call: text })),
  starter: fields({
    name: maybe(string),
    kept: maybe(fields({ at: number, grams: number })),
    fed: maybe(fields({ at: number, flour: number, celsius: number })),
    put: maybe(fields({ at: number, where: id })),
    renewed: maybe(number),
    signs: listOf(fields({ at: number })),
    marks: instants,
  }),
});
