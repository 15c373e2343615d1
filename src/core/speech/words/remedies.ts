import { inTongue } from '../tongue.ts';
import { MITTS, RAW_DOUGH } from './care.ts';

/**
 * What to do about a sign at each stage: the sign, now, next time, and the caution where it can hurt.
 * Null: nothing is to be done. Filled with `showHeats`, and `crumbHeat` with the core’s least. Common practice, no source.
 */
export const remedies = inTongue('remedies', 'remedies', {
  levain: {
    slow: {
      sign: 'Little rise, flat top',
      now: 'Warm it and wait one to four hours. Mix later.',
      next: 'Feed it twice after the fridge. Keep it warmer.',
    },
    past: {
      sign: 'Dipped, sharp, runny',
      now: 'Just dipped: use it now. Long past: feed it first.',
      next: 'Less starter in the feed, or a cooler spot.',
    },
  },
  mix: {
    soupy: {
      sign: 'Soupy dough',
      now: 'Rest 20 minutes, then fold. No more water, no more flour.',
      next: 'Hold back 15 % of the water.',
    },
    cold: {
      sign: 'Dough too cold',
      now: 'Put it in a warm spot. Warm second water helps little.',
      next: 'Measure flour and room, then set the water.',
    },
    hot: {
      sign: 'Dough too warm',
      now: 'Put it in a cool room. Cold second water helps little.',
      next: 'Measure flour and room, then set the water.',
    },
    noSalt: {
      sign: 'No salt in it',
      now: 'Wet the salt, work it in, fold twice. It rose fast till now.',
      next: 'Say it out loud once the salt is in.',
      care: RAW_DOUGH,
    },
  },
  folds: {
    tears: {
      sign: 'Tears, springs back',
      now: 'Stop. Rest it 15 to 30 minutes.',
      next: 'Fewer pulls, with more rest between.',
    },
  },
  bulk: {
    flat: {
      sign: 'Flat edge, no bubbles',
      now: 'Wait, or warm it. Look again in 45 to 60 minutes.',
      next: 'Warmer dough, or more levain.',
    },
    ready: {
      sign: 'Domed, wobbly, bubbles',
      now: 'Divide now. Sooner still if it is warm.',
      next: 'Note how high it rose.',
    },
    fallen: {
      sign: 'Fallen, sticky, sour',
      now: 'Bake it in a tin, or flat in a tray, now.',
      next: 'End the bulk sooner, or keep it cooler.',
      care: 'Fillings that spoil: time counts, not looks. Follow your local food rules.',
    },
  },
  sheet: {
    rips: {
      sign: 'The sheet rips',
      now: 'Stop, fold over the tear, rest. Fill only the whole part.',
      next: 'Spread it after one or two folds. Wet the bench.',
    },
    wet: {
      sign: 'Wet, sliding filling',
      now: 'Blot it, use less, scatter it. Give one more fold.',
      next: 'Drain, dry and chill it. Keep to 10 to 20 %.',
    },
  },
  divide: {
    lumpy: {
      sign: 'Lumpy, many scraps',
      now: 'Tuck scraps inside. Preshape it, then rest it.',
      next: 'Cut each piece in two cuts.',
    },
  },
  preshape: {
    splits: {
      sign: 'The skin splits',
      now: 'Rest it 10 to 15 minutes more, seam down.',
      next: 'Preshape it looser.',
    },
    runs: {
      sign: 'Runs out flat',
      now: 'Preshape again, short rest. If it still runs, use a tin.',
      next: 'More folds, less water, or shape it sooner. Change one.',
    },
  },
  basket: {
    stuck: {
      sign: 'Stuck in the basket',
      now: 'Chill it 15 to 20 minutes. Ease it out with a scraper.',
      next: 'Rice flour in a dry basket, or a liner.',
    },
  },
  cold: {
    still: {
      sign: 'Has not grown',
      now: 'Leave it out 60 to 120 minutes, then bake.',
      next: 'End the bulk later, or chill it for less time.',
    },
    over: {
      sign: 'At the rim, wobbly',
      now: 'Bake it now from cold, in a pot. Cut it shallow.',
      next: 'Chill it sooner, at {fridgeHeat} or less. Load fewer at once.',
      care: `No cold dough into hot clay or enamel. ${MITTS}`,
    },
  },
  proof: {
    far: {
      sign: 'Far over, still stretchy',
      now: 'Shape it once more. Watch it for 20 to 45 minutes.',
      next: 'Look at it sooner.',
    },
  },
  oven: {
    burst: {
      sign: 'Burst at the side',
      now: 'Let it bake on. It is good as it is.',
      next: 'Longer proof, or looser skin, seam down. Change one.',
    },
    flat: {
      sign: 'Flat, the cut stays shut',
      now: 'Bake it right through.',
      next: 'A shorter rise.',
    },
    black: {
      sign: 'Black base',
      now: 'Out of the pot. Last 5 to 10 minutes on the rack.',
      next: 'Rack up, parchment, and a tray on the shelf below.',
      care: MITTS,
    },
    pale: {
      sign: 'Pale crust',
      now: 'Lid off, 5 to 10 minutes more.',
      next: 'Hotter oven, lid off sooner, or shorter rise. Change one.',
      care: MITTS,
    },
    dark: {
      sign: 'Too dark, hard crust',
      now: 'Cover it loosely. Turn the oven down a little.',
      next: 'Make loaves with fruit or cheese smaller.',
      care: MITTS,
    },
    leaks: {
      sign: 'Filling leaks and burns',
      now: 'Parchment under it. Let it cool, then lift off burnt filling outdoors.',
      next: 'Leave 2 to 3 cm of edge clear. Big cold pieces inside.',
      care: `Melted filling burns: let it cool. ${MITTS}`,
    },
  },
  cool: {
    crackles: {
      sign: 'Crackles, fine cracks',
      now: 'Nothing to do: crusts sing as they cool.',
      next: null,
    },
  },
  cut: {
    gummy: {
      sign: 'Gummy crumb',
      now: 'Still warm: 10 minutes more in the oven. Cool: toast it.',
      next: 'Bake to {crumbHeat} and golden. Then let it cool.',
      care: MITTS,
    },
    dense: {
      sign: 'Tight, few big holes',
      now: 'Toast it.',
      next: 'Longer bulk, warmer bulk, or riper levain. Change one.',
    },
    flyingCrust: {
      sign: 'A hole under the crust',
      now: null,
      next: 'Look at two more signs first.',
    },
    streaks: {
      sign: 'Streaks in the crumb',
      now: null,
      next: 'Less flour on the bench.',
    },
  },
  handOver: {
    soft: {
      sign: 'Soft crust',
      now: 'Open the bag. Crisp it 5 to 8 minutes, oven hot.',
      next: 'Bag it at {bagHeat} or less, in paper.',
    },
  },
} as const);
