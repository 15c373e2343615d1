import { EAR_ENGINES } from '../../../src/core/ear/person.ts';
import { confusion } from './confusion.ts';
import { listened, type Listened } from './heard-by.ts';
import { openNets } from './nets.ts';
import { overs, percent, scored } from './scored.ts';
import { SCORING_SPEECH } from './texts.ts';
import { SCORING } from './voices.ts';

type Tell = (name: string, figure: string) => void;

/** `npm run bench`: the ear's rows, and what is taken for what. */
export async function earRows(tell: Tell): Promise<string> {
  const nets = await openNets();
  const all: Listened[] = [];
  for (const voice of SCORING) all.push(await listened(voice, SCORING_SPEECH, nets));
  return reportEar(all, tell);
}

/**
 * How well the ear tells phrases, with voices that no threshold was found on. They are made, and so is the
 * kitchen: a made voice says a phrase more alike each time than people do. No person was listened to.
 */
export function reportEar(all: readonly Listened[], tell: Tell): string {
  const voices = `${all.length} made voices, synthetic`;
  const scores = EAR_ENGINES.map((engine) => ({ engine, score: scored(all, engine) }));
  for (const { engine, score } of scores) {
    tell(
      `ear, ${engine}, ${voices}: 3–4 phrases, taken and right at 30 / 20 / 10 dB`,
      `${overs(score.right)} %`,
    );
    tell(
      `ear, ${engine}: taken for another of them, of ${score.wrong.of}`,
      `${percent(score.wrong).toFixed(1)} %`,
    );
    tell(
      `ear, ${engine}: sentences of ordinary speech taken for one, of ${score.false.of}`,
      `${percent(score.false).toFixed(1)} %`,
    );
    tell(
      `ear, ${engine}: sentences one sound away from a phrase taken for it, of ${score.alike.of}`,
      `${percent(score.alike).toFixed(0)} %`,
    );
    tell(
      `ear, ${engine}: digits among all eleven, taken and right at 30 / 20 / 10 dB`,
      `${overs(score.digits)} %`,
    );
  }
  return scores
    .map(
      ({ engine, score }) =>
        `\near, ${engine}, said and taken for (synthetic):\n${confusion(score)}`,
    )
    .join('\n');
}
