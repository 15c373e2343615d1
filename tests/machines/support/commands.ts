import fc from 'fast-check';

/**
 * One random command: what to do, and plain numbers that say how where it is done. A command has a
 * meaning in any kitchen, so that a failing run can be made shorter.
 */
export interface Command {
  readonly do:
    | 'onward'
    | 'turn'
    | 'press'
    | 'answer'
    | 'load'
    | 'fewer'
    | 'lidOff'
    | 'reading'
    | 'correct'
    | 'heard'
    | 'snooze'
    | 'takeBack'
    | 'takeBackOther'
    | 'start'
    | 'end'
    | 'reload'
    | 'jump'
    | 'wallBack'
    | 'starter';
  readonly a: number;
  readonly b: number;
  readonly c: number;
}

/** How often each comes: mostly the right thing, so that the oven is reached and two bakes meet. */
const WEIGHTS: Readonly<Record<Command['do'], number>> = {
  onward: 60,
  turn: 12,
  press: 7,
  answer: 4,
  load: 2,
  fewer: 4,
  lidOff: 4,
  reading: 5,
  correct: 3,
  heard: 5,
  snooze: 5,
  takeBack: 8,
  takeBackOther: 1,
  start: 5,
  end: 1,
  reload: 2,
  jump: 1,
  wallBack: 2,
  starter: 5,
};

const any = fc.nat({ max: 9_999 });

const command: fc.Arbitrary<Command> = fc.oneof(
  ...Object.entries(WEIGHTS).map(([name, weight]) => ({
    weight,
    arbitrary: fc.record({ do: fc.constant(name as Command['do']), a: any, b: any, c: any }),
  })),
);

export const commandRuns = (most: number): fc.Arbitrary<Command[]> =>
  fc.array(command, { minLength: 1, maxLength: most, size: 'max' });
