import fc from 'fast-check';

/** What to do; the numbers say where and how, in any kitchen. */
export interface PotsCommand {
  readonly do: keyof typeof WEIGHTS;
  readonly a: number;
  readonly b: number;
  readonly c: number;
}

/** How often each comes: mostly what is right, so that many pots are full at once. */
const WEIGHTS = {
  onward: 60,
  turn: 9,
  sleep: 2,
  closed: 1,
  load: 4,
  lidOff: 5,
  lane: 4,
  oven: 3,
  crust: 3,
  turns: 4,
  potOut: 2,
  fewer: 1,
  ended: 1,
  heard: 4,
  takeBack: 9,
  reload: 3,
  wallBack: 2,
  start: 4,
};

const any = fc.nat({ max: 9_999 });
const command: fc.Arbitrary<PotsCommand> = fc.oneof(
  ...Object.entries(WEIGHTS).map(([name, weight]) => ({
    weight,
    arbitrary: fc.record({ do: fc.constant(name as PotsCommand['do']), a: any, b: any, c: any }),
  })),
);

export const potsRuns = (most: number): fc.Arbitrary<PotsCommand[]> =>
  fc.array(command, { minLength: 1, maxLength: most, size: 'max' });
