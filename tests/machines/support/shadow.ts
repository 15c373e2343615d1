import { expect } from 'vitest';
import type { LogRecord } from '../../../src/core/records/record.ts';
import type { Kitchen } from '../../../machines/kitchen/kitchen.ts';
import type { Hand } from './hand.ts';
import type { Mirror } from './mirror.ts';

const idsOf = ({ standing }: Kitchen): readonly string[] => standing.map(({ id }) => id);

/**
 * A second kitchen that sees the facts alone, as plain text, and never the clock: what a reload
 * would come to, after every fact.
 */
export class Shadow {
  private kitchen: Kitchen;

  constructor({ fold, machines }: Hand) {
    this.kitchen = fold.emptyKitchen(machines);
  }

  /** Takes the newest fact, and must come to where the live kitchen stood when it was written. */
  follow({ fold, kitchen, machines, records }: Hand, mirror: Mirror): void {
    const { fact, position } = JSON.parse(JSON.stringify(records.at(-1)!)) as LogRecord;
    const { taken, kitchen: next } = fold.apply(this.kitchen, machines, fact);
    expect([fact.kind, taken], 'a fact that was written is taken again').toEqual([fact.kind, true]);
    expect(JSON.parse(JSON.stringify(fold.positionOf(next))), 'replayed = live').toEqual(position);
    expect(idsOf(next), 'the same facts stand').toEqual(idsOf(kitchen));
    expect(idsOf(kitchen), 'those of the model stand').toEqual(mirror.stack.map(({ id }) => id));
    expect(Object.keys(next.starts)).toEqual(Object.keys(kitchen.starts));
    expect(fold.takeBackTarget(kitchen)?.id ?? null).toBe(mirror.latest);
    this.kitchen = next;
  }
}
