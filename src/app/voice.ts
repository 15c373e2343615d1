import type { OwnWords, Speaker, Stop } from '../../machines/ports.ts';
import type { Pace } from '../core/speech/pace.ts';
import { utterancesOf } from '../core/speech/utterances.ts';

/** A caption stays this long at least, and half a second a word beyond two. */
const LEAST_MS = 2000;
const WORD_MS = 430;
/** Between one utterance and the next. */
const PAUSE_MS = 500;

export interface Voice {
  /** Says it and captions it, utterance by utterance; what is being said is cut short. */
  say(words: string): void;
  hush(): void;
  /** The act it spoke of is done: nothing more is said of it, and its caption goes once it could be read. */
  done(): void;
}

/** One voice at a time, at the pace that is wanted; its words are captioned whether it can be heard or not. */
export function makeVoice(
  speaker: Speaker,
  later: (ms: number, then: () => void) => Stop,
  setCaption: (words: string) => void,
  own: () => OwnWords,
  pace: () => Pace = () => 'grown',
): Voice {
  let stopSpeech: Stop = () => {};
  let stopWait: Stop = () => {};
  let stopStanding: Stop = () => {};
  /** What is still to be said. */
  let left: readonly string[] = [];
  /** Counts what was begun: the end of one utterance must not clear the caption of a later one. */
  let turn = 0;
  /** Of the utterance that is captioned: whether it stood for its least time, and whether its act is done. */
  let stood = true;
  let isDone = false;
  const speakNext = (): void => {
    const [words = '', ...rest] = left;
    left = rest;
    turn += 1;
    stood = isDone = false;
    setCaption(words);
    if (words === '') return;
    const mine = turn;
    const speech = speaker.say(words, own(), pace());
    stopSpeech = speech.stop;
    const over = async (): Promise<void> => {
      await speech.over;
      if (mine !== turn) return;
      if (left.length > 0) stopWait = later(PAUSE_MS, speakNext);
      else setCaption('');
    };
    stopWait = later(Math.max(LEAST_MS, words.split(/\s+/).length * WORD_MS), over);
    stopStanding = later(LEAST_MS, () => {
      stood = true;
      if (!isDone) return;
      stopWait();
      void over();
    });
  };
  const hush = (): void => {
    left = [];
    stopSpeech();
  };
  return {
    hush,
    done() {
      hush();
      isDone = true;
      if (!stood) return;
      stopWait();
      setCaption('');
    },
    say(words) {
      hush();
      stopWait();
      stopStanding();
      left = utterancesOf(words, pace());
      speakNext();
    },
  };
}
