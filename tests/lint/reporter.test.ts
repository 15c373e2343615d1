import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, onTestFinished, test } from 'vitest';
import { COUNT_FILE, type Count } from '../reporter.ts';

const root = fileURLToPath(new URL('../../', import.meta.url));
const IMPORTS = `import { afterAll, beforeAll, beforeEach, describe, test } from 'vitest';\n`;

/** Runs vitest with our reporter on test files with these contents, by name. */
function count(files: Readonly<Record<string, string>>): Count & { code: number | null } {
  const dir = mkdtempSync(join(tmpdir(), 'loafward-reporter-'));
  onTestFinished(() => rmSync(dir, { recursive: true, force: true }));
  symlinkSync(join(root, 'node_modules'), join(dir, 'node_modules'));
  writeFileSync(join(dir, 'package.json'), '{ "type": "module" }');
  writeFileSync(join(dir, 'vitest.config.js'), 'export default {};');
  for (const [name, content] of Object.entries(files))
    writeFileSync(join(dir, `${name}.test.js`), IMPORTS + content);
  const file = join(dir, 'count.json');
  const env = Object.fromEntries(
    Object.entries(process.env).filter(([name]) => !/^(VITEST|NODE_ENV$|TEST$)/.test(name)),
  );
  const { status } = spawnSync(
    process.execPath,
    [
      join(root, 'node_modules/vitest/vitest.mjs'),
      'run',
      '--allowOnly=false',
      `--reporter=${join(root, 'tests/reporter.ts')}`,
    ],
    { cwd: dir, env: { ...env, [COUNT_FILE]: file } },
  );
  return { ...(JSON.parse(readFileSync(file, 'utf8')) as Count), code: status };
}

const GOOD = `test('good', () => {});\n`;
const HOOK = `(() => { throw new Error('the hook broke'); });\n`;

test('green tests are counted, each row of a table too', () => {
  const counted = count({ one: GOOD, table: `test.each([1, 2])('%i', () => {});` });
  expect(counted).toEqual({ passed: 3, failed: 0, failures: [], notRun: [], code: 0 });
});

test('a test whose program is missing is told apart from all others, by what it needs', () => {
  const counted = count({
    lacking: `${GOOD} test('lacking', ({ skip }) => skip('needs pocketsphinx'));`,
  });
  const notRun = [expect.stringMatching(/^lacking.* > lacking: needs pocketsphinx$/) as string];
  expect(counted).toEqual({ passed: 1, failed: 0, failures: [], notRun, code: 0 });
});

test('all that must not pass for green is counted as red, once each', () => {
  /** Content, tests that pass beside the failure, and how each failure is named. */
  const red: Record<string, [content: string, passed: number, ...named: RegExp[]]> = {
    bad: [`${GOOD} test('bad', () => { throw new Error('no'); });`, 1, / > bad: no$/],
    lost: [`import './gone.js';\n${GOOD}`, 0, /: .*gone\.js/],
    torn: [`${GOOD} throw new Error('torn');`, 0, /: torn$/],
    empty: ['', 0, /: No test suite found/],
    before: [`beforeAll${HOOK} ${GOOD}`, 0, /: the hook broke$/],
    after: [`afterAll${HOOK} ${GOOD}`, 1, /: the hook broke$/],
    each: [`beforeEach${HOOK} ${GOOD}`, 0, / > good: the hook broke$/],
    group: [
      `${GOOD} describe('group', () => { beforeAll${HOOK} test('a', () => {}); test('b', () => {}); });`,
      1,
      / > group: a hook failed$/,
    ],
    left: [`${GOOD} test.skip('left', () => {});`, 1, / > left: did not run$/],
    later: [`${GOOD} test.todo('later');`, 1, / > later: did not run$/],
    excused: [
      `${GOOD} test('excused', ({ skip }) => skip('too slow'));`,
      1,
      / > excused: did not run$/,
    ],
    alone: [
      `${GOOD} test.only('alone', () => {});`,
      0,
      / > good: did not run$/,
      / > alone: .*only/,
    ],
    stray: [`test('good', () => { Promise.reject(new Error('stray')); });`, 1],
  };
  const counted = count(Object.fromEntries(Object.entries(red).map(([name, [c]]) => [name, c])));

  const strays = counted.failures.filter((failure) => failure.startsWith('outside'));
  expect(strays).toEqual(['outside any test: stray']);
  for (const [name, [, , ...named]] of Object.entries(red))
    expect(counted.failures.filter((failure) => failure.startsWith(`${name}.test.js`))).toEqual(
      named.map((part) => expect.stringMatching(part) as string),
    );
  expect(counted.passed).toBe(Object.values(red).reduce((sum, [, passed]) => sum + passed, 0));
  expect(counted.failed).toBe(counted.failures.length);
  expect(counted.failed).toBe(Object.values(red).reduce((sum, r) => sum + r.length - 2, 1));
  expect(counted.code).toBe(1);
});
