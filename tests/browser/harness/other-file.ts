import type { FileParts } from '../../../src/core/records/log-file.ts';
import { EQUIPMENT } from '../../../src/core/kitchen/equipment.ts';
import type { LogRecord } from '../../../src/core/records/record.ts';
import { DAY } from '../../../src/core/units.ts';
import { fileOf } from '../../fakes/saved-file.ts';
import { bakedYear } from '../../machines/support/baked-year.ts';
import { START } from './open-app.ts';

/** What an input of files is handed. */
export interface Chosen {
  readonly name: string;
  readonly mimeType: string;
  readonly buffer: Buffer;
}

/** A file's text as one that may be chosen. */
export const chosen = (text: string): Chosen => ({
  name: 'loafward-log.jsonl',
  mimeType: 'application/jsonl',
  buffer: Buffer.from(text),
});

/** What another invented tablet would have saved: its log, and what else is said. */
export const savedLog = (
  own: readonly LogRecord[],
  parts: Partial<Pick<FileParts, 'circle' | 'keepsakes'>> = {},
): string =>
  fileOf({
    ...{ own, others: [], equipment: EQUIPMENT, pictures: [], circle: [], keepsakes: [] },
    ...parts,
  });

/** So many invented bakes of another tablet: no id of theirs is given on this one. */
export const harbourRows = (bakes: number): readonly LogRecord[] =>
  bakedYear({ bakes, seed: 8, until: START - DAY, leftOpen: false }).map(
    (row) => JSON.parse(JSON.stringify(row).replaceAll(/"(f\d+)"/g, '"harbour-$1"')) as LogRecord,
  );
