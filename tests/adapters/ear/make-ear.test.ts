import { beforeEach, describe, expect, it } from 'vitest';
import type { EarAsk, EarTold } from '../../../machines/ear-port.ts';
import { makeEar } from '../../../src/adapters/ear/make-ear.ts';
import type { FromThread } from '../../../src/adapters/ear/messages.ts';
import type { Saying } from '../../../src/core/ear/person.ts';
import { makeEarParts, opensPort, type FakeEarParts } from '../../fakes/ear-parts.ts';

const ASK: EarAsk = { engine: 'plain', people: [], active: ['done'] };
const NUMBERS = { count: 0, size: 1, data: new Float32Array() };
const SAYINGS: readonly Saying[] = [{ plain: NUMBERS, learned: null }];

let its: FakeEarParts;
beforeEach(() => {
  its = makeEarParts();
});
const settled = async (): Promise<void> => {
  for (let n = 0; n < 40; n += 1) await Promise.resolve();
};

/** An ear that listens, and what it told. */
async function listening(ear = makeEar(its.parts)) {
  const told: EarTold[] = [];
  const stop = ear.listen(ASK, (one) => told.push(one));
  await settled();
  return { ear, told, stop };
}
const told = (kind: 'open' | 'speaks', turn = its.threads[0]!.turn): FromThread => ({
  turn,
  kind: 'told',
  told: kind === 'open' ? { kind } : { kind, speaks: true },
});
/** Nothing of the last microphone is left open, and nothing is waited for. */
const isLetGo = () => ({
  stopped: its.tracks.every((track) => track.stopped === 1),
  open: its.wires.some(({ closed }) => closed === 0),
  session: its.sessions.at(-1) ?? false,
  waits: its.waits,
});
const LET_GO = { stopped: true, open: false, session: false, waits: [] };

describe('an ear that listens', () => {
  it('asks for the microphone as it is, and tells what its thread tells', async () => {
    let asked: MediaStreamConstraints | undefined;
    const { media } = its.parts;
    const ask: MediaDevices['getUserMedia'] = (what) => media!.getUserMedia((asked = what));
    its.parts = { ...its.parts, media: { getUserMedia: ask } };
    const { told: heard } = await listening();
    expect(asked).toEqual({
      audio: {
        channelCount: 1,
        ...{ echoCancellation: false, noiseSuppression: false, autoGainControl: false },
      },
    });
    expect(its.threads[0]!.asked.at(-1)).toMatchObject({ kind: 'listen', rate: 48_000, ask: ASK });
    its.threads[0]!.tell(told('open'));
    its.threads[0]!.tell(told('speaks'));
    expect(heard).toEqual([{ kind: 'open' }, { kind: 'speaks', speaks: true }]);
    expect([its.sessions, its.waits, its.tracks[0]!.stopped]).toEqual([[true], [], 0]);
  });

  it('lets it go at once when it is stopped, and hears and tells nothing more', async () => {
    const { told: heard, stop } = await listening();
    const { turn } = its.threads[0]!;
    stop();
    stop();
    expect(isLetGo()).toEqual(LET_GO);
    expect(its.threads[0]!.asked.at(-1)).toEqual({ kind: 'shut', turn });
    its.threads[0]!.tell(told('open', turn));
    its.wires[0]!.lost();
    expect([heard, its.sessions, its.threads[0]!.ended]).toEqual([[], [true, false], false]);
  });

  it('stops the tracks of a leave that comes after it was stopped', async () => {
    let allow = (): void => {};
    its.leave = new Promise((resolve) => (allow = resolve));
    const { stop } = await listening();
    expect(its.tracks).toEqual([]);
    stop();
    allow();
    await settled();
    expect(its.tracks).toHaveLength(1);
    expect(isLetGo()).toEqual(LET_GO);
    expect(its.threads[0]!.asked.filter(opensPort)).toEqual([]);
  });

  it.each([
    ['denied', 'NotAllowedError'],
    ['none', 'NotFoundError'],
    ['failed', 'NotReadableError'],
  ])('says why there is none: %s', async (why, name) => {
    its.leave = Promise.reject(new DOMException('', name));
    const { told: heard } = await listening();
    expect(heard).toEqual([{ kind: 'over', why }]);
    expect(isLetGo()).toEqual(LET_GO);
  });

  it('has none where the browser has no microphone at all', async () => {
    its.parts = { ...its.parts, media: undefined };
    expect((await listening()).told).toEqual([{ kind: 'over', why: 'none' }]);
    expect(isLetGo()).toEqual(LET_GO);
  });

  it.each(['unplugged, or the leave taken back', 'taken by the tablet'])(
    'is over where it is gone in the middle: %s',
    async (how) => {
      const { told: heard } = await listening();
      its.threads[0]!.tell(told('open'));
      if (how === 'taken by the tablet') its.wires[0]!.lost();
      else its.tracks[0]!.onended!();
      expect(heard.at(-1)).toEqual({ kind: 'over', why: 'gone' });
      expect(isLetGo()).toEqual(LET_GO);
      expect(its.threads[0]!.asked.at(-1)!.kind).toBe('shut');
    },
  );

  it('fails where nothing is heard of an open microphone, and where its engine cannot be had', async () => {
    const { told: heard } = await listening();
    expect(its.waits.map(({ ms }) => ms)).toEqual([5_000]);
    its.waits[0]!.then();
    expect(heard).toEqual([{ kind: 'over', why: 'failed' }]);
    expect(isLetGo()).toEqual(LET_GO);
    its.here = false;
    expect((await listening()).told).toEqual([{ kind: 'over', why: 'failed' }]);
    // It was never asked for.
    expect(its.tracks).toHaveLength(1);
    expect(isLetGo()).toEqual(LET_GO);
  });

  it.each(['falls', 'says so'])(
    'is over where its thread %s; the next has another',
    async (how) => {
      const { ear, told: heard } = await listening();
      const [thread] = its.threads;
      if (how === 'falls') thread!.onerror!({ message: 'no' } as ErrorEvent);
      else thread!.tell({ turn: thread!.turn, kind: 'failed', message: 'no' });
      expect(heard).toEqual([{ kind: 'over', why: 'failed' }]);
      expect([thread!.ended, its.failed]).toEqual([true, ['The ear failed: no']]);
      expect(isLetGo()).toEqual(LET_GO);
      const again = await listening(ear);
      its.threads[1]!.tell(told('open', its.threads[1]!.turn));
      expect([again.told, its.threads.length]).toEqual([[{ kind: 'open' }], 2]);
    },
  );

  it('is stopped by one who listens later: one microphone is open', async () => {
    const { ear, told: first } = await listening();
    const { told: second } = await listening(ear);
    expect(its.tracks.map(({ stopped }) => stopped)).toEqual([1, 0]);
    its.threads[0]!.tell(told('open'));
    expect([first, second, its.threads.length]).toEqual([[], [{ kind: 'open' }], 1]);
  });
});

describe('a saying that is taken', () => {
  async function taking(ear = makeEar(its.parts)) {
    const speaks: boolean[] = [];
    const take = ear.take('plain', (now) => speaks.push(now));
    await settled();
    return { ear, take, speaks };
  }
  const taken = (sayings: readonly Saying[] | null): void =>
    its.threads[0]!.tell({ turn: its.threads[0]!.turn, kind: 'taken', sayings });

  it('is handed over, with the microphone let go', async () => {
    const { take, speaks } = await taking();
    its.threads[0]!.tell(told('open'));
    its.threads[0]!.tell(told('speaks'));
    taken(SAYINGS);
    expect([await take.over, speaks]).toEqual([SAYINGS, [true]]);
    expect(isLetGo()).toEqual(LET_GO);
  });

  it('is silent where nobody spoke, and failed where it is unplugged or its thread falls', async () => {
    const silent = await taking();
    taken(null);
    expect(await silent.take.over).toBe('silent');
    const gone = await taking(silent.ear);
    its.tracks[1]!.onended!();
    expect(await gone.take.over).toBe('failed');
    const fell = await taking(silent.ear);
    its.threads[0]!.onerror!({ message: 'no' } as ErrorEvent);
    expect(await fell.take.over).toBe('failed');
    expect(isLetGo()).toEqual(LET_GO);
  });

  it('is what was said till it is stopped: the microphone is let go before it is understood', async () => {
    const { take } = await taking();
    its.threads[0]!.tell(told('open'));
    take.stop();
    expect(isLetGo()).toEqual(LET_GO);
    expect(its.threads[0]!.asked.at(-1)).toEqual({ kind: 'enough', turn: its.threads[0]!.turn });
    taken(SAYINGS);
    expect(await take.over).toBe(SAYINGS);
  });

  it('is stopped where it is given up, where it had not begun, and by what listens later', async () => {
    const { ear, take } = await taking();
    take.cancel();
    taken(SAYINGS);
    const early = ear.take('plain', () => {});
    early.stop();
    const replaced = await taking(ear);
    await listening(ear);
    const all = [take, early, replaced.take].map(({ over }) => over);
    expect(await Promise.all(all)).toEqual(['stopped', 'stopped', 'stopped']);
    expect(its.wires.map(({ closed }) => closed > 0)).toEqual([true, true, true, false]);
  });
});

it('has an engine or not, and not where the thread falls over it', async () => {
  const ear = makeEar(its.parts);
  expect(await ear.fetch('learned')).toBe(true);
  its.here = false;
  expect(await ear.fetch('learned')).toBe(false);
  its.threads[0]!.postMessage = () => its.threads[0]!.onerror!({ message: 'no' } as ErrorEvent);
  expect(await ear.fetch('learned')).toBe(false);
});
