import { heard } from './hear.ts';

interface Heard {
  evaluate(expression: string): Promise<unknown>;
}

/** In a page: samples of −1…1 as text, which is all that comes out of one. */
const PACK = `(samples) => {
  const whole = Int16Array.from(samples, (s) => Math.max(-1, Math.min(1, s)) * 32767);
  const bytes = new Uint8Array(whole.buffer);
  let text = '';
  for (let i = 0; i < bytes.length; i += 8192)
    text += String.fromCharCode(...bytes.subarray(i, i + 8192));
  return btoa(text);
}`;

/** The samples that this expression gives in a page, a Float32Array or a promise of one. */
export async function samplesIn(page: Heard, expression: string): Promise<Int16Array> {
  const text = await page.evaluate(`(async () => (${PACK})(await ${expression}))()`);
  const bytes = Buffer.from(String(text), 'base64');
  return new Int16Array(bytes.buffer.slice(bytes.byteOffset, bytes.byteOffset + bytes.length));
}

/**
 * Everything that sounded since the audio of a page with `HEAR_RECORD_SCRIPT` began, as samples at this
 * rate, Hz.
 */
export async function recorded(page: Heard, rate: number): Promise<Int16Array> {
  await heard(page);
  return samplesIn(
    page,
    `(async () => {
      const { rate, blocks } = globalThis.__recorded;
      const long = blocks.length * 128;
      const resampled = new OfflineAudioContext(1, Math.ceil((long * ${rate}) / rate), ${rate});
      const buffer = resampled.createBuffer(1, long, rate);
      blocks.forEach((block, i) => buffer.getChannelData(0).set(block, i * 128));
      const source = resampled.createBufferSource();
      source.buffer = buffer;
      source.connect(resampled.destination);
      source.start();
      return (await resampled.startRendering()).getChannelData(0);
    })()`,
  );
}
