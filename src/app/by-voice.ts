import { activeOf } from '../core/ear/active.ts';
import type { Heard } from '../core/ear/heard.ts';
import { DIGITS, type EarPhrase } from '../core/ear/phrases.ts';
import { lessonPages } from '../core/lessons/lesson-pages.ts';
import type { BakeStage, OvenStage } from '../core/records/stage.ts';
import { earSays } from '../core/speech/words/ear-bench.ts';
import { controlFor, onPage, pressFor, readOut } from '../parts/pedal-press.ts';
import { isByHand } from '../screens/bench/by-voice.ts';
import { actOf, longerOf } from '../screens/bench/longer.ts';
import type { House } from '../screens/house.ts';
import type { Meant } from './listening.ts';

const isDigit = (phrase: EarPhrase): boolean => DIGITS.some((digit) => digit === phrase);

export interface ByVoice {
  /** What may be said now, the likeliest first. */
  active(known: ReadonlySet<EarPhrase>): readonly EarPhrase[];
  mean(heard: Heard, active: readonly EarPhrase[]): Meant;
  /** Nobody said more: a number that stands there is read back. */
  onEnded(active: readonly EarPhrase[]): void;
}

/**
 * What is said presses what a pedal would: what only a hand may do stays so. A number is keyed on the page's
 * own keys, read back, and taken by its own press after a *yes*; one that was begun by hand is ended by hand.
 */
export function makeByVoice(parts: {
  readonly house: House;
  readonly bake: () => string | null;
  /** A press of a voice is none of a hand. */
  readonly pressing: (press: () => void) => void;
  /** The page has had the time to answer. */
  readonly settled: (then: () => void) => void;
  readonly onLesson: (stage: BakeStage | OvenStage) => void;
}): ByVoice {
  const { house, bake, pressing } = parts;
  /** What stands on the keypad by what was said, and what of it was read back. */
  let keyed = '';
  let readBack: string | null = null;

  const press = (does: EarPhrase): void => {
    const el = controlFor(document, does);
    if (el) pressing(() => pressFor(el, () => house.say(earSays.byHand)));
  };
  const takesKeys = (): boolean => {
    const page = onPage(document);
    return page !== null && page.does.has('one') && page.typed === keyed;
  };
  const askDigits = (): void => {
    keyed = '';
    readBack = null;
    if (takesKeys()) house.say(earSays.digits);
  };
  const showMe = (): void => {
    if (controlFor(document, 'showMe')) return press('showMe');
    const act = actOf(house, bake());
    if (act) parts.onLesson(act.stage as BakeStage | OvenStage);
  };
  const DOES: Readonly<Partial<Record<EarPhrase, () => void>>> = {
    longer: () => house.say(longerOf(house, bake())),
    hush: () => house.say(''),
    lidOff: () => house.say(earSays.byHand),
    showMe,
    reading() {
      press('reading');
      parts.settled(askDigits);
    },
    yes() {
      keyed = '';
      readBack = null;
      press('yes');
    },
    no() {
      press('no');
      askDigits();
    },
  };
  const key = (digit: EarPhrase): void => {
    press(digit);
    keyed = onPage(document)?.typed ?? '';
    readBack = null;
  };
  return {
    active(known) {
      const page = onPage(document);
      if (page === null) return [];
      const act = actOf(house, bake());
      const { typed } = page;
      if (typed === '') keyed = '';
      return activeOf(
        {
          does: page.does,
          over: page.over,
          byHand: page.held || (act !== null && isByHand(act)),
          asksBack: readBack !== null && readBack === typed,
          takesKeys: typed === keyed,
          runs: act !== null && act.deadline !== null,
          teaches:
            act !== null &&
            act.task === null &&
            lessonPages(act.stage as BakeStage | OvenStage).length > 0,
          learns: house.ways().learner === 'on',
        },
        known,
      );
    },
    mean({ phrase }, active) {
      // What is not listened for is not understood, whoever says it.
      if (phrase === null || !active.includes(phrase))
        return { made: 'nothing', then: () => undefined };
      return isDigit(phrase)
        ? { made: 'key', then: () => key(phrase) }
        : { made: 'act', then: DOES[phrase] ?? (() => press(phrase)) };
    },
    onEnded(active) {
      if (keyed === '' || !active.some(isDigit) || !takesKeys()) return;
      const takes = controlFor(document, 'yes');
      // Nobody can tell what it is of, or it is no number yet: by hand.
      if (!takes || takes.hasAttribute('aria-disabled')) return;
      readBack = keyed;
      house.say(`${readOut(takes)}. ${earSays.agree}`);
    },
  };
}
