import { spawn } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { availableParallelism, tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { builtSite } from './browser/harness/built-site.ts';
import { COUNT_FILE, type Count } from './reporter.ts';

/** `npm test`: every check there is, and one line at the end that counts them all. */

const root = fileURLToPath(new URL('../', import.meta.url));
const bin = (path: string) => join(root, 'node_modules', path);

/** All of it ends by then, counted from the start: against a command that hangs, and no measure of anything. Two
 * calm cores need a third of it; shared with others they have taken twice as long. */
const LONGEST = 75 * 60_000;

/** Projects that run by themselves, after the others, each with so many files at once: a browser needs the
 * whole machine. */
const APART: Readonly<Record<string, number>> = { browser: availableParallelism(), alone: 1 };
/** Full matrices, soaks and mutants take as long as they take: `npm run faults` is for hands. */
const LEFT_OUT = ['faults', 'tablets'];

const failures: string[] = [];
const notRun: string[] = [];
let passed = 0;

interface Ran {
  readonly ok: boolean;
  readonly out: string;
}

/** Runs one of the tools; prints what it prints, or hands it back. */
function run(args: string[], env: NodeJS.ProcessEnv = {}, isShown = true): Promise<Ran> {
  return new Promise((resolve) => {
    const child = spawn(process.execPath, args, {
      cwd: root,
      env: { ...process.env, ...env },
      stdio: ['ignore', isShown ? 'inherit' : 'pipe', 'inherit'],
      timeout: Math.max(1, Math.round(LONGEST - performance.now())),
    });
    let out = '';
    child.stdout?.on('data', (chunk: Buffer) => (out += chunk.toString()));
    child.once('error', (error) => resolve({ ok: false, out: String(error) }));
    child.once('close', (code) => resolve({ ok: code === 0, out }));
  });
}

/** One check that is a command of its own, and counts as one. */
async function check(name: string, work: () => Promise<boolean>): Promise<void> {
  console.log(`\n== ${name}`);
  const began = performance.now();
  const ok = await work().catch((error: unknown) => {
    console.error(error instanceof Error ? error.message : error);
    return false;
  });
  const seconds = ((performance.now() - began) / 1000).toFixed(1);
  console.log(`${ok ? 'passed' : 'FAILED'}: ${name}, ${seconds} s`);
  if (ok) passed += 1;
  else failures.push(name);
}

/** One run of vitest over these projects. A run that ends badly without a count is a failure. */
async function runProjects(projects: readonly string[], atOnce = 1): Promise<void> {
  console.log(`\n== tests: ${projects.join(', ')}`);
  const folder = mkdtempSync(join(tmpdir(), 'loafward-count-'));
  const file = join(folder, 'count.json');
  const { ok } = await run(
    [
      bin('vitest/vitest.mjs'),
      'run',
      '--allowOnly=false',
      '--reporter=default',
      '--reporter=tests/reporter.ts',
      `--maxWorkers=${atOnce}`,
      ...projects.map((name) => `--project=${name}`),
    ],
    { [COUNT_FILE]: file },
  );
  let count: Count = {
    passed: 0,
    failed: 1,
    failures: [`${projects.join(', ')}: no count`],
    notRun: [],
  };
  try {
    count = JSON.parse(readFileSync(file, 'utf8')) as Count;
  } catch {
    // The run died before it could count: the failure above stands.
  }
  rmSync(folder, { recursive: true });
  passed += count.passed;
  failures.push(...count.failures);
  notRun.push(...count.notRun);
  if (!ok && count.failed === 0) failures.push(`${projects.join(', ')}: ended badly`);
}

/** The projects that have test files; a test file that no project runs is a failure. */
async function projectsWithFiles(): Promise<string[]> {
  const args = [bin('vitest/vitest.mjs'), 'list', '--filesOnly', '--json'];
  const { ok, out } = await run(args, {}, false);
  if (!ok) throw new Error('vitest could not list the tests.');
  const listed = JSON.parse(out) as { file: string; projectName: string }[];
  const inProjects = new Set(listed.map(({ file }) => file));
  for (const name of readdirSync(join(root, 'tests'), { recursive: true, encoding: 'utf8' })) {
    const file = join(root, 'tests', name);
    if (/\.test\.tsx?$/.test(name) && !inProjects.has(file))
      failures.push(`tests/${name}: in no project`);
  }
  return [...new Set(listed.map(({ projectName }) => projectName))];
}

// Each of them keeps one core busy.
await Promise.all([
  check('types', async () => (await run([bin('typescript/bin/tsc'), '-b'])).ok),
  check('lint', async () => (await run([bin('eslint/bin/eslint.js'), '.'])).ok),
  check('format', async () => (await run([bin('prettier/bin/prettier.cjs'), '--check', '.'])).ok),
]);
await check('build', async () => (await builtSite()) !== '');

try {
  const projects = await projectsWithFiles();
  const together = projects.filter((name) => !(name in APART || LEFT_OUT.includes(name)));
  // Left to itself vitest keeps one core of two idle.
  if (together.length > 0) await runProjects(together, availableParallelism());
  for (const [name, atOnce] of Object.entries(APART))
    if (projects.includes(name)) await runProjects([name], atOnce);
} catch (error) {
  failures.push(error instanceof Error ? error.message : String(error));
}

console.log('');
for (const left of notRun) console.log(`NOT RUN: ${left}`);
for (const failure of failures) console.log(`FAILED: ${failure}`);
console.log(`${passed} passed, ${failures.length} failed`);
process.exitCode = failures.length === 0 ? 0 : 1;
