import { fact7, position7 } from './upgrade-lanes.ts';

/** Plain data of a row, as it was found. */
type Data = Readonly<Record<string, unknown>>;

const isData = (value: unknown): value is Data =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** `value` with one of its fields changed, where it has it as plain data; else as it is. */
const within = (value: Data, name: string, change: (inner: Data) => Data): Data => {
  const inner = value[name];
  return isData(inner) ? { ...value, [name]: change(inner) } : value;
};

/** Version 1 knew only loaves shaped by hand, retarded, and baked in a pot. */
const process1 = (process: Data): Data => ({
  shaping: 'round',
  warm: 0,
  vessel: 'pot',
  ...process,
});

const recipe1 = (recipe: Data): Data =>
  within(within(recipe, 'process', process1), 'formula', (formula) =>
    within(formula, 'process', process1),
  );

/** Where the machines stood, of a row or of a jump: the oven had a pot in, no task had called, no timer ran. */
const position1 = (position: Data): Data => ({
  timers: {},
  ...within(
    within(position, 'oven', (oven) => ({ tasks: {}, vessel: 'pot', ...oven })),
    'bakes',
    (bakes) =>
      Object.fromEntries(
        Object.entries(bakes).map(([id, bake]) => [
          id,
          isData(bake) ? { tasks: {}, ...bake } : bake,
        ]),
      ),
  ),
});

/** A field of its own by whatever name came. */
const at = (data: Data, name: unknown): unknown =>
  typeof name === 'string' && Object.hasOwn(data, name) ? data[name] : undefined;

/** A result of before waits had names: it was of the wait that its own row ended in. */
const result1 = (result: Data, fact: Data, position: Data): Data => {
  if (result['since'] !== undefined) return result;
  const { who, stage } = result;
  const bakes = isData(position['bakes']) ? position['bakes'] : {};
  const place = who === 'oven' ? position['oven'] : at(bakes, who);
  const entered = isData(place) && isData(place['entered']) ? place['entered'] : {};
  return { ...result, since: at(entered, stage) ?? fact['at'] };
};

const fact1 = (fact: Data, position: Data): Data => {
  const { results } = fact;
  const named = Array.isArray(results)
    ? {
        ...fact,
        results: results.map((one: unknown) => (isData(one) ? result1(one, fact, position) : one)),
      }
    : fact;
  return within(within(named, 'recipe', recipe1), 'position', position1);
};

/** Before warm proofs nobody wanted the oven hot beforehand. */
const position2 = (position: Data): Data =>
  within(position, 'oven', (oven) => ({ soon: false, ...oven }));

/** Before, nothing was known of the starter between bakes. */
const position3 = (position: Data): Data => ({ starter: { signs: [], marks: {} }, ...position });

const TURNS: readonly unknown[] = ['loafFirst', 'loafLater'];

/** Before, all of a filling was in with one press, and a loaf could be put before one that was looked at. */
const fact10 = (fact: Data): Data => {
  if (fact['kind'] === 'start')
    return within(fact, 'recipe', (recipe) => ({ ...recipe, fillingAtOnce: true }));
  return fact['kind'] === 'press' && TURNS.includes(fact['act']) ? { ...fact, freely: true } : fact;
};

/** A row's own position changed, and that of a jump. */
const inPositions =
  (change: (position: Data) => Data) =>
  (row: Data): Data =>
    within(
      within(row, 'fact', (fact) => within(fact, 'position', change)),
      'position',
      change,
    );

/** What each version's rows lack against the next one's; the first is of version 1. */
const UPGRADES: readonly ((row: Data) => Data)[] = [
  (row) => {
    const position = isData(row['position']) ? row['position'] : {};
    return within(
      within(row, 'fact', (fact) => fact1(fact, position)),
      'position',
      position1,
    );
  },
  inPositions(position2),
  inPositions(position3),
  // Version 5 has more ways out of a look; its rows lack nothing.
  (row) => row,
  // Version 6 puts off a call that was silenced, and takes that back; its rows lack nothing.
  (row) => row,
  // Version 7 goes on out of a wait too, past its look, and calls for an oven that was to go off; its rows
  // lack nothing.
  (row) => row,
  // Version 8 tells what is in the oven apart from the oven.
  (row) => {
    const position = isData(row['position']) ? row['position'] : {};
    const oven = isData(position['oven']) ? position['oven'] : {};
    return inPositions(position7)(within(row, 'fact', (fact) => fact7(fact, oven)));
  },
  // Version 9 bakes a loaf that went over flat, in a tray; its rows lack nothing.
  (row) => row,
  // Version 10 knows what each pot holds; where nobody said, any loaf fits.
  (row) => row,
  // Version 11 has each filling ticked, and a loaf that was looked at go in next.
  (row) => within(row, 'fact', fact10),
  // Version 12 knows what a cut loaf showed; its rows lack nothing.
  (row) => row,
];

/**
 * A row of an older machine version as the present one would have written it, version and all. Only
 * what is missing is filled in; a row of today comes back as it is. Never throws.
 *
 * @param version the row's machine version, a whole number
 */
export function upgrade(row: object, version: number): object {
  const later = UPGRADES.slice(Math.max(0, version - 1));
  return later.reduce<Data>(
    (old, step, i) => ({ ...step(old), machineVersion: Math.max(1, version) + i + 1 }),
    row as Data,
  );
}
