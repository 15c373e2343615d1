import { readFileSync } from 'node:fs';
import type { Formula } from '../../../src/core/formula/formula.ts';

/** A formula that comes with the program. */
export const bread = (id: string): Formula =>
  JSON.parse(readFileSync(`assets/formulas/${id}.json`, 'utf8')) as Formula;
