import { describe, expect, it } from 'vitest';
import { MACHINE_VERSION as TODAY } from '../../machines/kitchen/kitchen.ts';
import { readLogFile } from '../../src/core/records/read-log-file.ts';
import { planFault } from '../../src/core/records/read-plan.ts';
import { positionFault, readRecord } from '../../src/core/records/read-record.ts';
import type { Recipe } from '../../src/core/formula/recipe.ts';
import { recipeOf, startOf } from './circle/support.ts';
import { laidDay } from '../fakes/laid-day.ts';
import type { LogRecord } from '../../src/core/records/record.ts';
import { makeRow } from '../fakes/records.ts';
import { sealed, sumIn } from '../fakes/saved-file.ts';

const DEEP = `${'['.repeat(20_000)}${']'.repeat(20_000)}`;
/** It is an object, and no text can be made of it. */
const UNTOLD = '{"toString":1,"valueOf":1}';

const ring: Record<string, unknown> = {};
ring['ring'] = ring;

describe('a row of the log', () => {
  it.each([
    ['a number too long for JSON', 12n],
    ['a ring', ring],
    ['a deep nest', JSON.parse(DEEP) as unknown],
    ['what no text can be made of', JSON.parse(UNTOLD) as unknown],
  ])('with %s in a field is refused by its name', (_, odd) => {
    for (const name of ['seq', 'machineVersion', 'position', 'fact'] as const) {
      const found = readRecord({ ...makeRow(1), [name]: name === 'position' ? 7 : odd }, TODAY);
      expect('reason' in found && found.reason.path).toMatch(new RegExp(`^${name}`));
    }
  });
});

describe('a row whose parts are not what they have to be', () => {
  const start = { ...makeRow(1).fact, ...startOf(recipeOf('cherry-hazelnut', 2)) };
  const row = (fact: object, position: object = makeRow(1).position) => ({
    ...makeRow(1),
    machineVersion: TODAY,
    position,
    fact,
  });
  const { recipe } = start as unknown as { recipe: Recipe };
  const { position } = makeRow(1);
  const press = { ...makeRow(1).fact, kind: 'press', who: 'bake-1', act: 'answer' };
  const result = { who: 'a', stage: 'b', since: 1, marks: {}, model: 'm' };

  it('is read where they are', () => {
    for (const fact of [start, press, { ...press, item: 'dent', loaves: ['a'], results: [result] }])
      expect(readRecord(row(fact), TODAY).record).not.toBeNull();
  });

  it.each<[string, object, object?]>([
    ['fact.id', { ...press, id: 'constructor' }],
    ['fact.who', { ...press, who: '__proto__' }],
    ['fact.bake', { ...start, bake: 'toString' }],
    ['fact.loaves[1]', { ...start, loaves: ['a', 7] }],
    ['fact.recipe.formula', { ...start, recipe: {} }],
    [
      'fact.recipe.formula.name',
      { ...start, recipe: { ...recipe, formula: { ...recipe.formula, name: 3 } } },
    ],
    [
      'fact.recipe.lines.filling',
      { ...start, recipe: { ...recipe, lines: { ...recipe.lines, filling: {} } } },
    ],
    [
      'fact.recipe.process.retard',
      { ...start, recipe: { ...recipe, process: { ...recipe.process, retard: '14 h' } } },
    ],
    ['fact.loaves', { ...press, loaves: 2 }],
    ['fact.holds.left', { ...press, holds: { left: 'much' } }],
    ['fact.text', { ...press, text: { note: 1 } }],
    ['fact.results', { ...press, results: 'none' }],
    ['fact.results[0].marks.end', { ...press, results: [{ ...result, marks: { end: 'soon' } }] }],
    ['position.bakes', press, { ...position, bakes: null }],
    ['position.bakes.a.stage', press, { ...position, bakes: { a: { marks: {} } } }],
    [
      'position.oven.entered.off',
      press,
      { ...position, oven: { ...position.oven, entered: { off: 'now' } } },
    ],
    ['position.timers.t.until', press, { ...position, timers: { t: { name: 'nuts' } } }],
    ['position.starter.signs', press, { ...position, starter: {} }],
    ['fact.position.lanes', { ...press, kind: 'jump', position: { ...position, lanes: [] } }],
  ])('is refused by the name of %s', (path, fact, at = position) => {
    const found = readRecord(row(fact, at), TODAY);
    const reason = found.record === null ? found.reason : positionFault(found.record);
    expect(reason?.path).toBe(path);
    const text = JSON.stringify(row(fact, at));
    expect(readLogFile(text, TODAY, sumIn(text)).reason).toMatchObject({ line: 1, path });
  });

  it.each([8.64e15 + 1, -1e300, Number.NaN])('has no instant that no clock shows: %d', (at) => {
    const fed = { ...makeRow(1).fact, kind: 'starter', did: 'later', until: at };
    const timer = { ...makeRow(1).fact, kind: 'timer', timer: 't', name: 'nuts', call: 'hot' };
    const facts = [
      { ...press, at },
      { ...press, raw: at },
      { ...press, was: at },
      { ...press, results: [{ ...result, marks: { end: at } }] },
      { ...press, results: [{ ...result, since: at }] },
      fed,
      { ...timer, until: at },
      { ...makeRow(1).fact, kind: 'snoozed', call: 'a', until: at },
    ];
    for (const fact of facts) expect(readRecord(row(fact), TODAY).record).toBeNull();
    expect(positionFault(row(press, { ...position, now: at }) as LogRecord)?.path).toBe(
      'position.now',
    );
    const plan = JSON.parse(JSON.stringify(laidDay())) as { touches: object[]; ask: object };
    const [touch] = plan.touches;
    expect(planFault({ ...plan, touches: [{ ...touch, fineUntil: at }] })).not.toBeNull();
    expect(
      planFault({ ...plan, ask: { ...plan.ask, away: [{ from: at, to: 5 }] } }),
    ).not.toBeNull();
  });

  it('tells no more of a long name than a line holds', () => {
    const long = 'x'.repeat(1_000_000);
    const found = readRecord(row({ ...press, holds: { [long]: 'much' } }), TODAY);
    expect('reason' in found && found.reason.path).toBe(`fact.holds.${long.slice(0, 40)}`);
    const cut = { ...makeRow(1).fact, kind: 'cut', target: 'f', answers: { [long]: 1 }, read: {} };
    const said = readRecord(row(cut), TODAY);
    expect('reason' in said && said.reason.path.length).toBeLessThan(100);
  });
});

describe('a saved file', () => {
  const read = (text: string) => readLogFile(text, TODAY, sumIn(text));

  it.each([
    ['version', `{"kitchenFile":${UNTOLD}}\n`],
    ['version, deep', `{"kitchenFile":${DEEP}}\n`],
    ['count of rows', `{"kitchenFile":3,"equipment":{},"circle":${UNTOLD}}\n`],
  ])('whose head has no %s that can be told is refused in its first line', (_, text) => {
    expect(read(text).reason).toMatchObject({ line: 1 });
  });

  it('with a row as deep as no program writes is refused: it could not be saved again', () => {
    const { fact, ...rest } = makeRow(1);
    const row = JSON.stringify({ ...rest, fact: { ...fact, more: '…' } }).replace('"…"', DEEP);
    const contents = {
      equipment: {},
      rows: { pictures: 0, circle: 0, keepsakes: 0, records: 1, others: [] },
    };
    expect(read(sealed([JSON.stringify(contents), row])).reason).toMatchObject({ line: 3 });
    expect(read(row).reason).toMatchObject({ line: 1 });
  });
});
