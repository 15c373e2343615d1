/** What the audio's own thread knows; no list of types that comes with the language has it. */
declare const sampleRate: number;
declare class AudioWorkletProcessor {
  readonly port: MessagePort;
}
declare function registerProcessor(name: string, made: new () => AudioWorkletProcessor): void;

/** So much is handed over at once, s: a thread that is woken for less is busy with waking. */
const LONG = 0.032;
const BLOCK = Math.round(LONG * sampleRate);

/** Hands what it hears to a port it was given, past the page. It makes no sound and keeps none. */
registerProcessor(
  'hand-over',
  class extends AudioWorkletProcessor {
    #to: MessagePort | null = null;
    #block = new Float32Array(BLOCK);
    #filled = 0;

    constructor() {
      super();
      this.port.onmessage = ({ data }: MessageEvent<MessagePort | null>) => (this.#to = data);
    }

    process([input]: readonly (readonly Float32Array[])[]): boolean {
      const heard = input?.[0];
      if (!heard || !this.#to) return true;
      for (let at = 0; at < heard.length;) {
        const part = heard.subarray(at, at + BLOCK - this.#filled);
        this.#block.set(part, this.#filled);
        this.#filled += part.length;
        at += part.length;
        if (this.#filled < BLOCK) continue;
        this.#to.postMessage(this.#block, [this.#block.buffer]);
        this.#block = new Float32Array(BLOCK);
        this.#filled = 0;
      }
      return true;
    }
  },
);
