import { beforeOvenItems } from '../../../src/core/records/lists.ts';
import { laneOf } from '../../../src/core/records/lane.ts';
import { must, work, type OnTheDay } from './bake-day.ts';
import { crustSigns, measure, warmSigns } from './bake-signs.ts';

const POTS = ['left', 'right'].map(laneOf);
const HOLDS = Object.fromEntries(POTS.map((pot) => [pot, 1_200]));

/** Done at the oven; false where it only waits, or has nothing to do. */
function atOven(on: OnTheDay): boolean {
  const { hand, day } = on;
  const { oven } = hand.kitchen;
  const press = (act: string, extra: object = {}): void => {
    must(hand.do({ kind: 'press', who: 'oven', act, ...extra } as never), act);
  };
  const { vessel, waiting } = oven.context;
  switch (hand.fold.stageOf(oven)) {
    case 'turnOn':
      work(on, 2);
      press('ovenOn', vessel === 'pot' ? { lanes: POTS, holds: HOLDS } : {});
      return true;
    case 'poke':
      work(on, 1);
      warmSigns({ ...on, day: { ...day, bulk: 1 } }, 'oven');
      press('pokeReady');
      return true;
    case 'before':
      work(on, 2);
      for (const item of beforeOvenItems(vessel)) press('answer', { item, value: 'ready' });
      return true;
    case 'score':
      hand.turn(1);
      press('scored');
      return true;
    case 'load':
      hand.turn(1);
      press('loaded', { loaves: vessel === 'pot' ? waiting.slice(0, 1) : waiting });
      return true;
    case 'turnOff':
      work(on, 3);
      press('ovenOff');
      return true;
    default:
      return false;
  }
}

/** Done at one lane; false where none wants hands. */
function atLane(on: OnTheDay): boolean {
  const { hand, day, dice } = on;
  for (const [who, lane] of Object.entries(hand.kitchen.lanes)) {
    const press = (act: string): void => must(hand.press(who, act), act);
    switch (hand.fold.stageOf(lane)) {
      case 'lift':
        work(on, 1);
        press('lidOff');
        return true;
      case 'vent':
        work(on, 1);
        press('steamOut');
        return true;
      case 'judge': {
        work(on, 1);
        const core = Math.round(10 * dice.normal(day.crust === 'pale' ? 96 : 97.5, 0.6)) / 10;
        measure(on, { what: 'coreTemperature', celsius: Math.min(99.5, core) });
        measure(on, { what: 'crust', colour: day.crust });
        crustSigns(on, who);
        press('crustReady');
        return true;
      }
      case 'unload':
        hand.turn(1);
        press('unloaded');
        return true;
    }
  }
  return false;
}

/** Whatever the oven and its pots want of hands now; false where they want nothing. */
export const heat = (on: OnTheDay): boolean => atLane(on) || atOven(on);
