import { learnedEngine, type Nets } from '../../../src/adapters/ear/learned-engine.ts';
import type { Cut } from '../../../src/core/ear/listener.ts';
import type { EarPerson, Saying } from '../../../src/core/ear/person.ts';
import { EAR_PHRASES, type EarPhrase } from '../../../src/core/ear/phrases.ts';
import { enrolled, phrasesSaid, speechSaid, type Said } from './corpus.ts';
import { learnPerson } from './learn.ts';
import { ALIKE } from './texts.ts';
import type { Voice } from './voices.ts';

/** A cut, and what both engines made of it. */
export interface Made {
  readonly cut: Cut;
  readonly saying: Saying;
}

/** What was said, as both engines heard it: each saying has both kinds of frame. */
export interface Asked extends Omit<Said, 'cuts'> {
  readonly made: readonly Made[];
}

/** A voice that is known, and what it says then. */
export interface Listened {
  readonly person: EarPerson;
  readonly phrases: readonly Asked[];
  readonly speech: readonly Asked[];
  /** What is nearly a phrase of the first set. */
  readonly alike: readonly Asked[];
}

export async function listened(
  voice: Voice,
  texts: readonly string[],
  nets: Nets,
  known: readonly EarPhrase[] = EAR_PHRASES,
): Promise<Listened> {
  const engine = learnedEngine(nets);
  const asked = async (all: readonly Said[]): Promise<readonly Asked[]> => {
    const found: Asked[] = [];
    for (const { phrase, over, cuts } of all) {
      const made: Made[] = [];
      for (const cut of cuts) made.push({ cut, saying: await engine.saying(cut) });
      found.push({ phrase, over, made });
    }
    return found;
  };
  return {
    person: await learnPerson(engine, voice.name, await enrolled(voice, known)),
    phrases: await asked(await phrasesSaid(voice, known)),
    speech: await asked(await speechSaid(voice, texts)),
    alike: await asked(await speechSaid(voice, ALIKE)),
  };
}
