import { spawnSync } from 'node:child_process';
import { chmodSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, onTestFinished, test } from 'vitest';

const SCRIPT = fileURLToPath(new URL('../../.ci/run', import.meta.url));

/** Runs the script with an npm that does this instead. */
function runWith(npm: string) {
  const bin = mkdtempSync(join(tmpdir(), 'loafward-ci-'));
  onTestFinished(() => rmSync(bin, { recursive: true, force: true }));
  writeFileSync(join(bin, 'npm'), `#!/usr/bin/env bash\n${npm}\n`);
  chmodSync(join(bin, 'npm'), 0o755);
  const { status, stdout } = spawnSync('bash', [SCRIPT], {
    env: { ...process.env, PATH: `${bin}:${process.env.PATH ?? ''}` },
    encoding: 'utf8',
  });
  return { status, last: stdout.trimEnd().split('\n').at(-1) };
}

test('a green run ends with its count and succeeds, having said that it is CI', () => {
  const npm = '[ "$CI $1" = "true test" ] && echo "812 passed, 0 failed"';
  expect(runWith(npm)).toEqual({ status: 0, last: '812 passed, 0 failed' });
});

test('a red run ends with its count, whatever npm says after it, and fails', () => {
  const npm = 'echo "810 passed, 2 failed"; echo "npm error code 1"; echo oh >&2; exit 1';
  expect(runWith(npm)).toEqual({ status: 1, last: '810 passed, 2 failed' });
});

test('a run that never counted is red, even if it says that all is well', () => {
  expect(runWith('echo "no packages"; exit 7')).toEqual({ status: 7, last: '0 passed, 1 failed' });
  expect(runWith('exit 0')).toEqual({ status: 1, last: '0 passed, 1 failed' });
});
