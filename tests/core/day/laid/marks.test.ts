import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';

const FOLDER = join(import.meta.dirname, '../../../../src/core/day/laid');
const MARK = /judgement|practice|source|from memory|seen/i;
/** A number that somebody chose: two digits, a share, or a count of minutes, hours or days. */
const CHOSEN = /(?<![\w.:])(?:\d{2,}[\d_]*|\d*\.\d+|\d+ \* (?:MINUTE|HOUR|DAY))\b/;

/** Lines with a chosen number that stands neither in a comment nor under a mark. */
function unmarked(text: string): string[] {
  const found: string[] = [];
  let comment = '';
  let isMarked = false;
  let isIn = false;
  for (const line of text.split('\n')) {
    if (/^\s*(?:\/\*\*|\*|\/\/)/.test(line)) {
      if (/^\/\*\*/.test(line)) comment = '';
      if (/^(?:\/\*\*| \*|\/\/)/.test(line)) comment += line;
      continue;
    }
    if (/^(?:export )?const /.test(line)) {
      isIn = true;
      isMarked = MARK.test(comment);
    } else if (/^\S/.test(line) && !/^[)}\]]/.test(line)) isIn = false;
    if (line === '') {
      comment = '';
      isIn = false;
    }
    const bare = line.replace(/'[^']*'|`[^`]*`|\/[^/]+\/(?=[.;,)])/g, '');
    const ownMark = MARK.test(line.split('//')[1] ?? '');
    if (CHOSEN.test(bare.split('//')[0]!) && !ownMark && !(isIn && isMarked))
      found.push(line.trim());
  }
  return found;
}

it.each(readdirSync(FOLDER))('%s: each number that was chosen bears its mark', (name) => {
  expect(unmarked(readFileSync(join(FOLDER, name), 'utf8'))).toEqual([]);
});

it('finds one that bears none', () => {
  expect(unmarked('/** How far. */\nexport const FAR = 12 * HOUR;\n')).toHaveLength(1);
  expect(unmarked('/** How far. Judgement. */\nexport const FAR = 12 * HOUR;\n')).toEqual([]);
  expect(
    unmarked('/** Judgement. */\nconst A = 12;\n\nconst b = () => now + 30 * MINUTE;\n'),
  ).toEqual(['const b = () => now + 30 * MINUTE;']);
});
