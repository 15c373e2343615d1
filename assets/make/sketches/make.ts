/**
 * Draws every sketch and writes it to assets/sketches: `npx tsx assets/make/sketches/make.ts`. Wanted
 * whenever a scene or the kit changed; a test holds the files to it. `--to DIR` writes elsewhere.
 */
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { scenes } from './scenes.ts';

const { values } = parseArgs({ options: { to: { type: 'string' } } });
const to = values.to ?? fileURLToPath(new URL('../../sketches', import.meta.url));

mkdirSync(to, { recursive: true });
for (const [name, draw] of Object.entries(scenes())) {
  writeFileSync(join(to, `${name}.svg`), draw());
}
