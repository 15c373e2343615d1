import type { Stop } from '../../../machines/ports.ts';
import { callsBus } from '../sound/calls-bus.ts';
import type { Pace } from '../../core/speech/pace.ts';
import type { Tongue } from '../../core/speech/tongue.ts';
import type { ReadAloud } from './read-aloud.ts';

/** Words begin this long after they are ready, s: time to hand them to the audio thread. */
export const SOON = 0.05;

/** Something that is being said. */
export interface Playing {
  /** Whether it was heard to its end: no call has cut it short. */
  readonly over: Promise<boolean>;
  readonly stop: Stop;
}

/**
 * Reads a text between calls: behind the tone that sounds, silent before the next call begins. The
 * device's voice is no node of the audio clock, so a timer cuts it.
 */
export function readBetween(
  context: AudioContext,
  text: string,
  reader: ReadAloud,
  later: (ms: number, then: () => void) => Stop,
  pace: Pace,
  tongue?: Tongue,
): Playing {
  let stops: Stop[] = [];
  let isOver = false;
  let isCut = false;
  let end: (heard: boolean) => void = () => {};
  const over = new Promise<boolean>((resolve) => (end = resolve));
  const stop = (): void => {
    isOver = true;
    const all = stops;
    stops = [];
    for (const one of all) one();
    end(!isCut);
  };
  const atStop = (one: Stop): void => void (isOver ? one() : stops.push(one));
  const cut = (at: number): void => {
    isCut = true;
    const wait = (at - context.currentTime - SOON) * 1000;
    if (wait > 0) atStop(later(wait, stop));
    else stop();
  };
  const seconds = reader.within(text, pace) / 1000;
  const spoken = callsBus(context).speak(context.currentTime + SOON, seconds, cut);
  atStop(spoken.stop);
  const begin = (): void => {
    const reading = reader.read(text, pace, tongue);
    atStop(reading.stop);
    void reading.over.then(stop);
  };
  atStop(later((spoken.at - context.currentTime) * 1000, begin));
  return { over, stop };
}
