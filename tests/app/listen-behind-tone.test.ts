import { expect, it } from 'vitest';
import type { EarAsk } from '../../machines/ear-port.ts';
import { listenBehindTone } from '../../src/app/listen-behind-tone.ts';
import { makeToldEar } from '../fakes/told-ear.ts';

const ask: EarAsk = { engine: 'plain', people: [], active: ['done'] };
const nothing = (): void => undefined;

it('opens no microphone before its note is over', async () => {
  const ear = makeToldEar();
  let end: () => void = nothing;
  const slow = { ...ear, tone: () => new Promise<void>((over) => (end = over)) };
  const stop = listenBehindTone(slow, ask, nothing, true);
  await Promise.resolve();
  expect(ear.asked).toBe(null);
  end();
  await Promise.resolve();
  expect(ear.asked).toBe(ask);
  stop();
  expect(ear.asked).toBe(null);
});

it('that was stopped meanwhile opens none at all', async () => {
  const ear = makeToldEar();
  listenBehindTone(ear, ask, nothing, true)();
  await Promise.resolve();
  await Promise.resolve();
  expect([ear.opened, ear.tones]).toEqual([0, ['open']]);
});

it('that hears for something else from now on is not told anew', () => {
  const ear = makeToldEar();
  listenBehindTone(ear, ask, nothing, false);
  expect([ear.asked, ear.tones]).toEqual([ask, []]);
});
