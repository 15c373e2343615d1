import type { Fact } from './fact.ts';
import type { Position } from './position.ts';

/** One row of the log, keyed by `seq`. `position` is where the kitchen stood after the fact. */
export interface LogRecord {
  readonly seq: number;
  readonly fact: Fact;
  readonly machineVersion: number;
  readonly position: Position;
}
