import { writeFileSync } from 'node:fs';
import { relative } from 'node:path';
import type { Reporter, TestModule, TestSuite } from 'vitest/node';

/** What a run came to. `failures` names each failed thing once; there are as many as `failed`. */
export interface Count {
  readonly passed: number;
  readonly failed: number;
  readonly failures: readonly string[];
  /** Tests for which this machine lacks a program, each with what it needs: neither passed nor failed. */
  readonly notRun: readonly string[];
}

/** `context.skip(NEEDS + program)` in a test: the one way to leave it out, and it is told. */
export const NEEDS = 'needs ';

/** Where the count is written as JSON; without it, it is printed. */
export const COUNT_FILE = 'LOAFWARD_COUNT';

/** A failure's first line and the line of the test it came from: the end of a log tells what failed and why. */
function whyOf(error: { message: string; stack?: string } | undefined): string {
  if (!error) return 'failed';
  const at = /tests\/[^\s()]*\.test\.tsx?:\d+/.exec(error.stack ?? '')?.[0];
  return `${error.message.split('\n')[0]!.slice(0, 300)}${at === undefined ? '' : ` (${at})`}`;
}

const failedItself = (suite: TestModule | TestSuite) => suite.errors().length > 0;

/** Whether a hook or an import above a test failed, so that the test could not run. */
function isUnder(start: TestModule | TestSuite): boolean {
  let suite = start;
  while (!failedItself(suite)) {
    if (suite.type === 'module') return false;
    suite = suite.parent;
  }
  return true;
}

function countModule(module: TestModule, failures: string[], notRun: string[]): number {
  const name = relative(process.cwd(), module.moduleId);
  const before = failures.length;
  let passed = 0;
  // A failed import, an empty file, a hook of the whole file; then the hooks of its groups.
  if (failedItself(module)) failures.push(`${name}: ${whyOf(module.errors()[0])}`);
  for (const suite of module.children.allSuites())
    if (failedItself(suite)) failures.push(`${name} > ${suite.fullName}: a hook failed`);
  for (const test of module.children.allTests()) {
    const result = test.result();
    const note = result.state === 'skipped' ? (result.note ?? '') : '';
    if (result.state === 'passed') passed += 1;
    else if (result.state === 'failed')
      failures.push(`${name} > ${test.fullName}: ${whyOf(result.errors[0])}`);
    else if (note.startsWith(NEEDS)) notRun.push(`${name} > ${test.fullName}: ${note}`);
    // Tests are not left out here. Those that could not run are counted with what stopped them.
    else if (!isUnder(test.parent)) failures.push(`${name} > ${test.fullName}: did not run`);
  }
  if (!module.ok() && failures.length === before) failures.push(`${name}: red without a reason`);
  return passed;
}

/** Counts tests, and whatever else must not pass for a green run. */
export default class CountingReporter implements Reporter {
  onTestRunEnd: NonNullable<Reporter['onTestRunEnd']> = (modules, strays, reason) => {
    const failures: string[] = [];
    const notRun: string[] = [];
    const passed = modules.reduce((sum, module) => sum + countModule(module, failures, notRun), 0);
    for (const stray of strays) failures.push(`outside any test: ${stray.message}`);
    if (reason === 'interrupted') failures.push('the run was interrupted');
    const count: Count = { passed, failed: failures.length, failures, notRun };
    const file = process.env[COUNT_FILE];
    if (file) writeFileSync(file, JSON.stringify(count));
    else console.log(`${count.passed} passed, ${count.failed} failed`);
  };
}
