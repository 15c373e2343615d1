import { mkdtemp, mkdir, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { onTestFinished } from 'vitest';

/** A folder of these files, gone again when the test is over. */
export async function folder(files: Readonly<Record<string, string | Buffer>> = {}) {
  const dir = await mkdtemp(join(tmpdir(), 'loafward-'));
  onTestFinished(() => rm(dir, { recursive: true, force: true }));
  for (const [name, content] of Object.entries(files)) {
    await mkdir(dirname(join(dir, name)), { recursive: true });
    await writeFile(join(dir, name), content);
  }
  return dir;
}
