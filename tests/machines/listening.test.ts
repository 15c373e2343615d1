import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  beginListening,
  DECIDE_MS,
  MOST_KEYS,
  NEXT_KEY_MS,
  OPEN_MS,
  SAYING_MS,
  SETTLE_MS,
  stepListening,
  type ListeningEvent,
  type Made,
} from '../../machines/listening/listening.ts';

type Bare = ListeningEvent extends infer E
  ? E extends { at: number }
    ? Omit<E, 'at'>
    : never
  : never;

/** The machine on a clock that the test turns; what falls due on the way is told, as the driver does. */
class Listening {
  now = 50_000;
  #at = beginListening();

  get state(): string {
    return String(this.#at.value);
  }
  get listens(): boolean {
    return this.#at.hasTag('listens');
  }
  /** What is said now is made something of. */
  get hears(): boolean {
    return this.#at.hasTag('hears');
  }
  get context() {
    return this.#at.context;
  }
  tell(event: Bare): void {
    this.#at = stepListening(this.#at, { ...event, at: this.now });
  }
  turn(ms: number): void {
    const to = this.now + ms;
    for (
      let until = this.context.until;
      until !== null && until <= to;
      until = this.context.until
    ) {
      this.now = Math.max(this.now, until);
      this.tell({ type: 'due' });
    }
    this.now = to;
  }
  sync(wanted: boolean, sounds: boolean): void {
    this.tell({ type: 'sync', wanted, sounds });
  }
  said(made: Made): void {
    this.tell({ type: 'speaks', speaks: true });
    this.tell({ type: 'speaks', speaks: false });
    this.tell({ type: 'said', made });
  }
}

const wanted = (): Listening => {
  const ear = new Listening();
  ear.sync(true, false);
  return ear;
};
const opened = (): Listening => {
  const ear = wanted();
  ear.tell({ type: 'pressed' });
  ear.turn(SETTLE_MS);
  ear.tell({ type: 'open' });
  return ear;
};

describe('the ear', () => {
  it('is off where nobody wants it, whatever is pressed', () => {
    const ear = new Listening();
    ear.tell({ type: 'pressed' });
    ear.turn(10_000);
    expect(ear.state).toBe('off');
  });

  it('waits for a prompt or a press', () => {
    const ear = wanted();
    ear.turn(60_000);
    expect(ear.state).toBe('shut');
  });

  it('opens behind a press, once the page has answered, and shuts by itself', () => {
    const ear = wanted();
    ear.tell({ type: 'pressed' });
    ear.turn(SETTLE_MS - 1);
    expect(ear.state).toBe('shut');
    ear.turn(1);
    expect(ear.state).toBe('opening');
    ear.tell({ type: 'open' });
    ear.turn(OPEN_MS - 1);
    expect(ear.state).toBe('open');
    ear.turn(1);
    expect(ear.state).toBe('shut');
    ear.turn(60_000);
    expect(ear.state).toBe('shut');
  });

  it('opens as a prompt is over, and shuts before the next one', () => {
    const ear = wanted();
    ear.sync(true, true);
    ear.turn(4_000);
    expect(ear.state).toBe('shut');
    ear.sync(true, false);
    expect(ear.listens).toBe(true);
    ear.sync(true, true);
    expect(ear.listens).toBe(false);
  });

  it('does not open behind a press while what it brought is being said', () => {
    const ear = wanted();
    ear.tell({ type: 'pressed' });
    ear.sync(true, true);
    ear.turn(5_000);
    expect(ear.state).toBe('shut');
    ear.sync(true, false);
    expect(ear.state).toBe('opening');
  });

  it('hears a saying out that began in time', () => {
    const ear = opened();
    ear.turn(OPEN_MS - 100);
    ear.tell({ type: 'speaks', speaks: true });
    ear.turn(SAYING_MS - 100);
    expect(ear.state).toBe('speaks');
    ear.tell({ type: 'said', made: 'act' });
    expect(ear.state).toBe('shut');
  });

  it('makes nothing of what was begun at another act', () => {
    const ear = opened();
    ear.tell({ type: 'speaks', speaks: true });
    ear.tell({ type: 'act' });
    expect(ear.hears).toBe(false);
  });

  it('shuts on talk without an end', () => {
    const ear = opened();
    ear.tell({ type: 'speaks', speaks: true });
    ear.turn(10 * 60_000);
    expect(ear.state).toBe('shut');
  });

  it('stays open behind a noise that nothing is made of, and no longer than it would have', () => {
    const ear = opened();
    ear.tell({ type: 'speaks', speaks: true });
    ear.tell({ type: 'speaks', speaks: false });
    ear.turn(DECIDE_MS);
    expect(ear.state).toBe('open');
    ear.turn(OPEN_MS - DECIDE_MS);
    expect(ear.state).toBe('shut');
  });

  it('does one act, and opens for no more until a prompt or a press', () => {
    const ear = opened();
    ear.said('act');
    ear.turn(60_000);
    expect(ear.state).toBe('shut');
    ear.said('act');
    expect(ear.state).toBe('shut');
    ear.tell({ type: 'pressed' });
    ear.turn(SETTLE_MS);
    expect(ear.listens).toBe(true);
  });

  it('takes a number digit by digit, and no more of them than a number has', () => {
    const ear = opened();
    ear.turn(OPEN_MS - 10);
    ear.said('key');
    ear.turn(NEXT_KEY_MS - 10);
    ear.said('key');
    expect(ear.state).toBe('open');
    ear.turn(NEXT_KEY_MS);
    expect(ear.state).toBe('shut');
    const quick = opened();
    for (let n = 1; n < MOST_KEYS; n += 1) quick.said('key');
    expect(quick.state).toBe('open');
    quick.said('key');
    expect(quick.state).toBe('shut');
  });

  it.each(['pressed', 'act'] as const)('gives up after two sayings, until one: %s', (type) => {
    const ear = opened();
    ear.said('nothing');
    expect(ear.state).toBe('open');
    ear.said('nothing');
    expect(ear.state).toBe('tiles');
    // That it gives up is said, and does not open it.
    ear.sync(true, true);
    ear.turn(3_000);
    ear.sync(true, false);
    ear.turn(60_000);
    expect(ear.state).toBe('tiles');
    ear.tell({ type });
    expect(ear.state).toBe('shut');
    expect(ear.context.failures).toBe(0);
    ear.turn(SETTLE_MS);
    expect(ear.listens).toBe(type === 'pressed');
  });

  it('counts what was not understood in a row: across openings, and what was understood ends it', () => {
    const ear = opened();
    ear.said('nothing');
    ear.said('key');
    ear.said('nothing');
    expect(ear.state).toBe('open');
    const next = opened();
    next.said('nothing');
    next.turn(OPEN_MS);
    next.sync(true, true);
    next.sync(true, false);
    next.tell({ type: 'open' });
    next.said('nothing');
    expect(next.state).toBe('tiles');
  });

  it.each(['denied', 'none', 'gone', 'failed'] as const)(
    'stays without a microphone, and says why, until it is asked for again: %s',
    (why) => {
      const ear = opened();
      ear.tell({ type: 'over', why });
      expect(ear.state).toBe(why);
      ear.tell({ type: 'pressed' });
      ear.tell({ type: 'act' });
      ear.sync(true, true);
      ear.sync(true, false);
      ear.turn(60_000);
      expect(ear.state).toBe(why);
      ear.tell({ type: 'again' });
      ear.turn(SETTLE_MS);
      expect(ear.listens).toBe(true);
      ear.tell({ type: 'over', why });
      ear.sync(false, false);
      expect(ear.state).toBe('off');
    },
  );

  it('does not open where the page offers nothing', () => {
    const ear = opened();
    ear.tell({ type: 'unasked' });
    ear.turn(60_000);
    expect(ear.state).toBe('shut');
  });
});

const EVENTS: fc.Arbitrary<Bare | { readonly type: 'turn'; readonly ms: number }> = fc.oneof(
  {
    weight: 4,
    arbitrary: fc.record({
      type: fc.constant('turn' as const),
      ms: fc.integer({ min: 0, max: 4_000 }),
    }),
  },
  fc.record({
    type: fc.constant('sync' as const),
    wanted: fc.integer({ min: 0, max: 9 }).map((n) => n > 0),
    sounds: fc.boolean(),
  }),
  fc.constantFrom<Bare>(
    { type: 'pressed' },
    { type: 'open' },
    { type: 'open' },
    { type: 'act' },
    { type: 'unasked' },
    { type: 'again' },
    { type: 'due' },
    { type: 'speaks', speaks: true },
    { type: 'speaks', speaks: false },
    { type: 'said', made: 'act' },
    { type: 'said', made: 'key' },
    { type: 'said', made: 'nothing' },
    { type: 'over', why: 'gone' },
  ),
);

it('is never open while anything sounds or where it is not wanted, acts once an opening, and always shuts', () => {
  let openings = 0;
  fc.assert(
    fc.property(fc.array(EVENTS, { size: 'max', maxLength: 120 }), (events) => {
      const ear = new Listening();
      /** Since when it listens without a prompt, a press or a digit. */
      let since: number | null = null;
      let mayOpen = false;
      for (const event of events) {
        const [listened, heard, { sounds: sounded, failures }] = [
          ear.listens,
          ear.hears,
          ear.context,
        ];
        if (event.type === 'turn') ear.turn(event.ms);
        else ear.tell(event);
        if (event.type === 'pressed' || event.type === 'again') mayOpen = true;
        if (event.type === 'sync' && sounded && !event.sounds) mayOpen = true;
        if (ear.listens && !listened) {
          openings += 1;
          expect(mayOpen).toBe(true);
          mayOpen = false;
          since = ear.now;
        }
        if (event.type === 'said' && event.made === 'act' && heard) expect(ear.listens).toBe(false);
        if (event.type === 'said' && event.made === 'key' && heard) since = ear.now;
        if (!ear.listens) since = null;
        else {
          expect([ear.context.wanted, ear.context.sounds]).toEqual([true, false]);
          expect(ear.now - since!).toBeLessThanOrEqual(OPEN_MS + SAYING_MS);
          expect(ear.context.until).not.toBeNull();
        }
        if (failures >= 1 && event.type === 'said' && event.made === 'nothing' && heard)
          expect(ear.state).toBe('tiles');
      }
      ear.turn(OPEN_MS + SAYING_MS + SETTLE_MS + OPEN_MS + SAYING_MS);
      expect(ear.listens).toBe(false);
    }),
    { numRuns: 400 },
  );
  expect(openings).toBeGreaterThan(300);
});
