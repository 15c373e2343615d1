/** A gain as the tests need it: what was set, and the last ramp to silence. */
class Param {
  value = 1;
  /** When a ramp to 0 ends, s. */
  silentAt = Number.POSITIVE_INFINITY;
  setValueAtTime(value: number) {
    this.value = value;
    this.silentAt = Number.POSITIVE_INFINITY;
  }
  linearRampToValueAtTime(value: number, when: number) {
    if (value === 0) this.silentAt = when;
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
  buffer: { readonly length: number; readonly rate: number } | null = null;
  onended: (() => void) | null = null;
  when = Number.POSITIVE_INFINITY;
  end = Number.POSITIVE_INFINITY;
  constructor(private readonly audio: TurnedAudio) {
    super();
  }
  start(when: number) {
    this.when = Math.max(when, this.audio.currentTime);
    this.audio.sources.push(this);
  }
  stop(when = 0) {
    this.end = Math.max(when, this.audio.currentTime);
  }
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

  createGain = () => new Node_();
  createBufferSource = () => new Source(this);
  createBuffer = (_channels: number, length: number, rate: number) => ({
    length,
    rate,
    copyToChannel: () => {},
  });
  async resume() {
    this.asked += 1;
    if (this.resumes === 'refused') throw new DOMException('', 'NotAllowedError');
    if (this.resumes === 'pending') return new Promise<void>(() => {});
    this.become('running');
  }
  become(state: TurnedAudio['state']) {
    if (state === this.state) return;
    this.state = state;
    this.dispatchEvent(new Event('statechange'));
  }

  /** Audio time passes, in steps of 10 ms, where the context runs. */
  turn(seconds: number) {
    if (this.state !== 'running') return;
    const steps = Math.round(seconds * 100);
    for (let i = 0; i < steps; i += 1) {
      this.currentTime = Math.round(this.currentTime * 100 + 1) / 100;
      for (const source of this.sources) this.#hear(source, this.currentTime);
    }
  }
  #hear(source: Source, now: number) {
    const long = (source.buffer?.length ?? 0) / (source.buffer?.rate ?? 1);
    const end = Math.min(source.end, source.when + long);
    let db = 0;
    let node: Node_ | null = source;
    for (; node !== null && node !== this.destination; node = node.to) {
      db += 20 * Math.log10(node.gain.value);
      if (now >= node.gain.silentAt) return;
    }
    if (node === null || now <= source.when || now > end) return;
    const known = this.heard.find((stretch) => stretch.source === source);
    if (known) known.until = now;
    else this.heard.push({ at: now - 0.01, until: now, db: Math.round(db), source });
  }
}
