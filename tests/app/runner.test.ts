import { beforeEach, describe, expect, it } from 'vitest';
import { MACHINES } from '../../machines/kitchen/kitchen.ts';
import { COURSE_HERE } from '../fakes/course-here.ts';
import type { Quiet } from '../../machines/kitchen/ringing.ts';
import { toneOf } from '../../src/core/speech/burst.ts';
import { HOUR, MINUTE } from '../../src/core/units.ts';
import { makeRunner, SAID_MS, type Runner } from '../../src/app/runner.ts';
import { makeSilentSound, type SilentSound } from '../fakes/silent-sound.ts';
import { makeTurnedClock, type TurnedClock } from '../fakes/turned-clock.ts';
import { Hand } from '../machines/support/hand.ts';

let clock: TurnedClock;
let sound: SilentSound;
let runner: Runner;
let ticks: number;
let hand: Hand;
let quiet: Quiet;
/** Kitchen time before the clock. */
let ahead: number;

beforeEach(() => {
  hand = new Hand();
  clock = makeTurnedClock(hand.now);
  sound = makeSilentSound('armed');
  ticks = 0;
  quiet = () => null;
  ahead = 0;
  runner = makeRunner({
    clock,
    sound,
    machines: MACHINES,
    course: COURSE_HERE,
    wallOf: (at) => at - ahead,
    tick: () => void (ticks += 1),
    quiet: (call, at) => quiet(call, at),
  });
  hand.start('a', 'mix.first');
  hand.press('a', 'mixed');
  runner.follow(hand.kitchen);
});

describe('the effect runner', () => {
  it('arms one alarm at the deadline and lays its call ahead', () => {
    expect(clock.pending()).toEqual([hand.now + 30 * MINUTE]);
    expect(sound.ringing()).toMatchObject([{ kind: 'act', inMs: 30 * MINUTE }]);
  });

  it('does nothing twice while nothing changes', () => {
    runner.follow(hand.kitchen);
    runner.follow(hand.kitchen);
    expect(clock.pending()).toHaveLength(1);
    expect(sound.rung).toHaveLength(1);
  });

  it('lets the call laid ahead go on ringing when it falls due', () => {
    hand.turn(30);
    clock.turn(30 * MINUTE);
    runner.follow(hand.kitchen);
    expect(ticks).toBe(1);
    expect(sound.rung).toHaveLength(1);
    expect(sound.ringing()).toHaveLength(1);
    expect(clock.pending()).toEqual([]);
  });

  it('silences the call when it is heard, and never rings two at once', () => {
    hand.turn(30);
    runner.follow(hand.kitchen);
    const call = hand.kitchen.attention.context.calls[0]!;
    hand.do({ kind: 'heard', call: call.id });
    runner.follow(hand.kitchen);
    expect(sound.ringing()).toEqual([]);
  });

  it('cancels and lays anew when the deadline moves', () => {
    hand.press('a', 'rested');
    hand.answer('a', { salt: 'in', secondWater: 'in' });
    hand.press('a', 'workedIn');
    runner.follow(hand.kitchen);
    expect(clock.pending()).toEqual([]);
    expect(sound.ringing()).toEqual([]);
    hand.press('a', 'unmeasured');
    runner.follow(hand.kitchen);
    expect(clock.pending()).toEqual([hand.now + 30 * MINUTE]);
    expect(sound.ringing()).toHaveLength(1);
  });

  /** The tablet's clock is set back; kitchen time goes on. */
  const setBack = (by: number) => {
    clock.set(clock.now() - by);
    ahead += by;
    runner.follow(hand.kitchen);
  };
  const ringFor = (ms: number) => {
    hand.turn(30);
    clock.turn(30 * MINUTE + ms);
    runner.follow(hand.kitchen);
  };

  it('has a call that rings go on where the clock is set back, as loud as it had become', () => {
    ringFor(20_000);
    setBack(3 * HOUR);
    expect(sound.ringing()).toMatchObject([{ kind: 'act', inMs: -20_000 }]);
    setBack(HOUR);
    expect(sound.ringing()).toMatchObject([{ kind: 'act', inMs: -20_000 }]);
  });

  it('does not begin one anew for the clocks’ drift, nor one that has had its say', () => {
    ringFor(20_000);
    setBack(3_000);
    expect(sound.rung).toHaveLength(1);
    clock.turn(5 * MINUTE);
    setBack(3 * HOUR);
    setBack(HOUR);
    expect(sound.rung).toHaveLength(1);
    expect(sound.ringing()).toHaveLength(1);
  });

  it('takes its say to be over with the reminder that its burst has', () => {
    const tones = Array.from({ length: 60 }, (_, n) => toneOf('act', n)?.at ?? 0);
    expect(Math.max(...tones) * 1_000).toBe(SAID_MS);
    expect(toneOf('hot', 1_000)).not.toBeNull();
  });

  it('counts real milliseconds in a rehearsal’s fast clock', () => {
    const fast = makeSilentSound('armed');
    makeRunner({
      clock: makeTurnedClock(hand.now, 60),
      sound: fast,
      machines: MACHINES,
      course: COURSE_HERE,
      wallOf: (at) => at,
      tick: () => undefined,
      quiet: () => null,
    }).follow(hand.kitchen);
    expect(fast.ringing()).toMatchObject([{ inMs: 30_000 }]);
  });

  it('rings a quiet call where its quiet ends, once, whatever happens meanwhile', () => {
    const morning = hand.now + 8 * HOUR;
    quiet = (_, at) => (at < morning ? morning : null);
    runner.follow(hand.kitchen);
    expect(sound.ringing()).toMatchObject([{ inMs: 8 * HOUR }]);
    hand.turn(30);
    clock.turn(30 * MINUTE);
    hand.start('b', 'bulk.proving');
    runner.follow(hand.kitchen);
    expect(sound.ringing()).toHaveLength(1);
    const rung = sound.rung.length;
    hand.turnTo(morning + MINUTE);
    clock.turn(morning + MINUTE - clock.now());
    runner.follow(hand.kitchen);
    expect(sound.rung).toHaveLength(rung);
    expect(sound.ringing()).toHaveLength(1);
  });

  it('stops a call that rings when its quiet begins, and lays it for the end', () => {
    hand.turn(30);
    clock.turn(30 * MINUTE);
    runner.follow(hand.kitchen);
    const until = hand.now + 8 * HOUR;
    quiet = () => until;
    runner.follow(hand.kitchen);
    expect(sound.ringing()).toMatchObject([{ inMs: 8 * HOUR }]);
  });

  it('leaves nothing behind when it stops', () => {
    runner.stop();
    expect(clock.pending()).toEqual([]);
    expect(sound.ringing()).toEqual([]);
  });
});
