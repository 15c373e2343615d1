import type { BrowserContext } from 'playwright-core';

/** How loud a page was over 10 ms of its audio time. */
export interface Moment {
  /** When it was rendered, by the real clock, ms since the epoch, whatever clock the page is given. */
  readonly wall: number;
  /** The page's own clock when it learned of it, up to 0.1 s later, ms. */
  readonly page: number;
  /** Audio time at its end, s. It stands still where the audio does. */
  readonly audio: number;
  /** Root mean square of the samples, 0…1. */
  readonly rms: number;
  readonly hidden: boolean;
}

/** A stretch of sound: `from` and `until` are real instants, ms; `peak` its loudest moment, 0…1. */
export interface Stretch {
  readonly from: number;
  readonly until: number;
  readonly peak: number;
}

const WORKLET_PATH = '/hear-worklet.js';
const WORKLET = `registerProcessor('hear', class extends AudioWorkletProcessor {
  sum = 0; count = 0; batch = [];
  constructor({ processorOptions }) { super(); this.records = processorOptions.records; }
  process([input]) {
    const [channel] = input;
    if (this.records) this.port.postMessage(channel?.slice() ?? new Float32Array(128));
    for (let i = 0; i < 128; i += 1) {
      const sample = channel?.[i] ?? 0;
      this.sum += sample * sample;
      this.count += 1;
      if (this.count * 100 < sampleRate) continue;
      const rms = Math.sqrt(this.sum / this.count);
      this.batch.push({ wall: Date.now(), audio: currentTime + i / sampleRate, rms });
      this.sum = 0;
      this.count = 0;
    }
    if (this.batch.length >= 10) this.port.postMessage(this.batch.splice(0));
    return true;
  }
});`;

/**
 * The worklet as a file of the page's own server, `serve({ dir, extra: HEAR_FILES })`: the content
 * policy allows no other place, and playwright's routes do not reach what a worklet loads. A page
 * without a network cannot be heard.
 */
export const HEAR_FILES: Readonly<Record<string, Buffer>> = {
  [WORKLET_PATH]: Buffer.from(WORKLET),
};

/**
 * Runs in the page before anything else: beside whatever is connected to an AudioContext's
 * destination stands a worklet that measures the same sound.
 */
export const HEAR_SCRIPT = `(() => {
  const moments = (globalThis.__moments = []);
  const deaf = (why) => (globalThis.__deaf = String(why));
  if (typeof AudioWorkletNode === 'undefined') return deaf('no worklets: not a secure context');
  const outs = (globalThis.__outs = []);
  const taps = new WeakMap();
  const modules = new WeakMap();
  const connect = AudioNode.prototype.connect;
  const moduleOf = (context) => {
    if (!modules.has(context)) modules.set(context, context.audioWorklet.addModule('${WORKLET_PATH}'));
    return modules.get(context);
  };
  /** What is connected to the tap of this key is measured into one list. */
  const tapOf = (key, context, into) => {
    if (taps.has(key)) return taps.get(key);
    const tap = context.createGain();
    taps.set(key, tap);
    const list = into();
    moduleOf(context).then(() => {
      const records = key === context && globalThis.__record;
      if (records) globalThis.__recorded = { rate: context.sampleRate, blocks: [] };
      const options = { channelCount: 1, channelCountMode: 'explicit', processorOptions: { records } };
      const ear = new AudioWorkletNode(context, 'hear', options);
      connect.call(tap, ear);
      connect.call(ear, context.destination); // pulled along; what it gives is silence
      ear.port.onmessage = ({ data }) => {
        if (data instanceof Float32Array) return globalThis.__recorded.blocks.push(data);
        const page = Date.now();
        const hidden = document.hidden;
        for (const moment of data) list.push({ ...moment, page, hidden });
      };
    }, deaf);
    return tap;
  };
  AudioNode.prototype.connect = function (to, ...rest) {
    if (to instanceof AudioDestinationNode && !(this.context instanceof OfflineAudioContext)) {
      connect.call(this, tapOf(this.context, this.context, () => moments));
      if (globalThis.__apart)
        connect.call(this, tapOf(this, this.context, () => (outs.push([]), outs.at(-1))));
    }
    return connect.call(this, to, ...rest);
  };
})();`;

/** The same, and each output of the page's own is measured by itself too: `heardApart`. */
export const HEAR_APART_SCRIPT = `globalThis.__apart = true;${HEAR_SCRIPT}`;

/** The same, and every sample is kept too: `recorded.ts`. */
export const HEAR_RECORD_SCRIPT = `globalThis.__record = true;${HEAR_SCRIPT}`;

/** Has every page that this context opens from now on heard; one already open must be reopened. */
export async function hear(context: BrowserContext): Promise<void> {
  await context.addInitScript(HEAR_SCRIPT);
}

/**
 * All moments so far, in order; none before the page's audio runs. Asking through playwright counts as
 * a gesture in the page, so a page that nobody may have touched is asked through `openTab`.
 *
 * @throws why, when the page cannot be heard: deafness is never taken for silence
 */
export async function heard(page: {
  evaluate(expression: string): Promise<unknown>;
}): Promise<Moment[]> {
  const ask = `globalThis.__deaf ?? globalThis.__moments ?? 'no HEAR_SCRIPT ran in it'`;
  const answer = await page.evaluate(ask);
  if (typeof answer === 'string') throw new Error(`The page cannot be heard: ${answer}.`);
  return answer as Moment[];
}

/** All moments of each output, in the order in which they were connected. */
export async function heardApart(page: {
  evaluate(expression: string): Promise<unknown>;
}): Promise<Moment[][]> {
  await heard(page);
  return (await page.evaluate('globalThis.__outs')) as Moment[][];
}

/**
 * Stretches of sound in these moments: louder than `floor` (−50 dB of full unless told), with pauses
 * up to `gap` ms bridged. 15 tells pulses apart, 500 one tone of a call from the next.
 */
export function stretches(
  moments: readonly Moment[],
  { floor = 0.003, gap = 15 }: { floor?: number; gap?: number } = {},
): Stretch[] {
  const found: { from: number; until: number; peak: number; audio: number }[] = [];
  for (const { wall, audio, rms } of moments) {
    if (rms < floor) continue;
    const last = found.at(-1);
    // By audio time: the rendering of it comes in blocks.
    if (last && (audio - last.audio) * 1000 <= 10.5 + gap) {
      Object.assign(last, { until: wall, audio, peak: Math.max(last.peak, rms) });
    } else found.push({ from: wall - 10, until: wall, audio, peak: rms });
  }
  return found.map(({ from, until, peak }) => ({ from, until, peak }));
}

/**
 * How far the audio fell behind the wall clock between two real instants, ms: a few on an idle machine,
 * hundreds on a busy one, where no page can be on time. What a test allows for being late, it allows
 * on top of this.
 */
export function stall(moments: readonly Moment[], from: number, until: number): number {
  const lags = moments
    .filter(({ wall }) => wall >= from && wall <= until)
    .map(({ wall, audio }) => wall - audio * 1000);
  return lags.length === 0 ? 0 : Math.max(...lags) - Math.min(...lags);
}
