import type { Ear } from '../../../machines/ear-port.ts';
import type { Stop } from '../../../machines/ports.ts';

/** The ear of this browser. */
export function openEar(later: (ms: number, then: () => void) => Stop): Ear {
  void later;
  throw new Error('Not yet.');
}
