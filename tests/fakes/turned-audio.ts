/** A gain on the audio clock: values set and ramps, as far as the tests need them. */
class Param {
  value = 1;
  #events: { readonly value: number; readonly when: number; readonly ramp: boolean }[] = [];
  setValueAtTime(value: number, when: number) {
    this.#add({ value, when, ramp: false });
  }
  linearRampToValueAtTime(value: number, when: number) {
    this.#add({ value, when, ramp: true });
  }
  cancelScheduledValues(from: number) {
    this.#events = this.#events.filter(({ when }) => when < from);
  }
  #add(event: { value: number; when: number; ramp: boolean }) {
    const after = this.#events.findIndex(({ when }) => when > event.when);
    this.#events.splice(after < 0 ? this.#events.length : after, 0, event);
  }
  /** What it is at an instant, s. */
  at(now: number): number {
    let [value, since] = [this.value, 0];
    for (const event of this.#events) {
      if (event.when > now) {
        const way = (now - since) / (event.when - since);
        return event.ramp ? value + (event.value - value) * way : value;
      }
      [value, since] = [event.value, event.when];
    }
    return value;
  }
}

class Node_ {
  to: Node_ | null = null;
  readonly gain = new Param();
  connect(to: Node_) {
    this.to = to;
  }
  disconnect() {
    this.to = null;
  }
}

class Source extends Node_ {
  buffer: Sound | null = null;
  onended: (() => void) | null = null;
  when = Number.POSITIVE_INFINITY;
  end = Number.POSITIVE_INFINITY;
  constructor(private readonly audio: TurnedAudio) {
    super();
  }
  over() {
    const then = this.onended;
    this.onended = null;
    then?.();
  }
  start(when: number) {
    this.when = Math.max(when, this.audio.currentTime);
    this.audio.sources.push(this);
  }
  stop(when = 0) {
    this.end = Math.max(when, this.audio.currentTime);
  }
}

interface Sound {
  readonly length: number;
  readonly sampleRate: number;
  readonly duration: number;
  getChannelData(): Float32Array;
}

/** A stretch of sound that came out: audio seconds, and dB below full. */
export interface Out {
  readonly at: number;
  readonly until: number;
  readonly db: number;
}

/**
 * An AudioContext whose time the test turns. It knows when a source is heard: only while it is
 * connected up to the destination, between its start and its end, and while the context runs.
 */
export class TurnedAudio extends EventTarget {
  currentTime = 0;
  readonly sampleRate = 8_000;
  state: AudioContextState | 'interrupted' = 'suspended';
  readonly destination = new Node_();
  readonly sources: Source[] = [];
  /** What was heard so far, in order; a stretch grows while it lasts. */
  readonly heard: { at: number; until: number; db: number; source: unknown }[] = [];
  /** What resume() does: allowed, never settling (no tap), or refused. */
  resumes: 'allowed' | 'pending' | 'refused' = 'allowed';
  asked = 0;
  /** Its output is gone: it says that it runs, and its time stands. */
  gone = false;

  createGain = () => new Node_();
  createBufferSource = () => new Source(this);
  createBuffer = (_channels: number, length: number, rate: number) => ({
    length,
    sampleRate: rate,
    duration: length / rate,
    getChannelData: () => new Float32Array(length),
    copyToChannel: () => {},
  });
  /** A file of one byte: how long it sounds, in tenths of a second. Anything else is damaged. */
  async decodeAudioData(file: ArrayBuffer): Promise<Sound> {
    const [tenths] = new Uint8Array(file);
    if (file.byteLength !== 1 || !tenths) throw new DOMException('', 'EncodingError');
    return this.createBuffer(1, (tenths / 10) * this.sampleRate, this.sampleRate);
  }
  async resume() {
    this.asked += 1;
    if (this.resumes === 'refused') throw new DOMException('', 'NotAllowedError');
    if (this.resumes === 'pending') return new Promise<void>(() => {});
    this.become('running');
  }
  async suspend() {
    this.become('suspended');
  }
  become(state: TurnedAudio['state']) {
    if (state === this.state) return;
    this.state = state;
    this.dispatchEvent(new Event('statechange'));
  }

  /** Audio time passes, in steps of 10 ms, where the context runs. */
  turn(seconds: number) {
    if (this.state !== 'running' || this.gone) return;
    const steps = Math.round(seconds * 100);
    for (let i = 0; i < steps; i += 1) {
      this.currentTime = Math.round(this.currentTime * 100 + 1) / 100;
      for (const source of this.sources) this.#hear(source, this.currentTime);
    }
  }
  #hear(source: Source, now: number) {
    const end = Math.min(source.end, source.when + (source.buffer?.duration ?? 0));
    if (now > end) source.over();
    let db = 0;
    let node: Node_ | null = source;
    for (; node !== null && node !== this.destination; node = node.to) {
      const gain = node.gain.at(now);
      if (gain < 0.001) return;
      db += 20 * Math.log10(gain);
    }
    if (node === null || now <= source.when || now > end) return;
    const known = this.heard.find((stretch) => stretch.source === source);
    if (known) known.until = now;
    else this.heard.push({ at: now - 0.01, until: now, db: Math.round(db), source });
  }
}
