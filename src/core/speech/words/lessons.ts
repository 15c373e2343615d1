import type { BakeStage, OvenStage } from '../../records/stage.ts';
import type { Sketch } from '../../sketches/sketches.ts';
import { inTongue } from '../tongue.ts';

/** What a learner is told before a step is met for the first time. */
export interface Lesson {
  /** Why it is done: a short question. */
  readonly title: string;
  readonly why: string;
  /** A word of the trade that is first met here. */
  readonly word?: { readonly name: string; readonly means: string };
  /** Signs that this step, or the next, asks for: taught with pictures before they are asked. */
  readonly signs?: Readonly<
    Partial<Record<Sketch, { readonly name: string; readonly means: string }>>
  >;
}

export const lessons: Readonly<Partial<Record<BakeStage | OvenStage, Lesson>>> = inTongue(
  'lessons',
  'lessons',
  {
    'read.plan': {
      title: 'Why read it through?',
      why: 'Bread takes many hours, but few minutes of your hands. Know when they are wanted.',
    },
    'read.list': {
      title: 'Why set it all out?',
      why: 'Once hands are in dough, nothing else can be fetched.',
    },
    'levain.feed': {
      title: 'Why feed the starter?',
      why: 'Yeast in it lifts the loaf. Fed with flour and water, it grows strong.',
      word: { name: 'Levain', means: 'the fed starter that goes into the dough' },
    },
    'levain.ripening': {
      title: 'Why wait for it?',
      why: 'Too young, it lifts little. Too old, it has no more to give.',
      word: { name: 'Ripe', means: 'at its strongest, just before it sinks' },
      signs: {
        levainRising: { name: 'It has risen', means: 'It stands well past its mark.' },
        levainRipe: { name: 'Domed, with bubbles', means: 'A round top, and bubbles all through.' },
      },
    },
    'levain.ripe': {
      title: 'Why keep some back?',
      why: 'A spoonful kept is the starter of your next loaf.',
    },
    'mix.weigh': {
      title: 'Why weigh it all?',
      why: 'A cup of flour is never twice the same. A scale is.',
    },
    'mix.first': {
      title: 'Why mix without salt?',
      why: 'Flour takes up water best before the salt goes in.',
    },
    'mix.rest': {
      title: 'Why let it rest?',
      why: 'Wet flour knits by itself. Your hands have less to do.',
      word: { name: 'Rest', means: 'flour and water left alone to knit' },
    },
    'mix.salt': {
      title: 'Why the salt now?',
      why: 'Salt gives flavour and a firm dough. It also slows the rise.',
      word: { name: 'Second water', means: 'a little water kept for this moment' },
    },
    'mix.work': {
      title: 'Why work it in?',
      why: 'Salt in one spot leaves the rest of the dough without.',
    },
    'mix.temperature': {
      title: 'Why take its heat?',
      why: 'Warm dough rises fast, cool dough slowly. All times here come from this number.',
    },
    'bulk.between': {
      title: 'Why does it rise in one piece?',
      why: 'A lot of dough keeps its warmth, and all of it ripens alike.',
      word: { name: 'Bulk', means: 'the first rise, all the dough in one tub' },
    },
    'bulk.fold': {
      title: 'Why fold the dough?',
      why: 'Each fold makes it stronger, so that it holds its gas.',
      word: { name: 'Fold', means: 'lift a side, stretch it, lay it over' },
    },
    'bulk.spread': {
      title: 'Why spread it thin?',
      why: 'On a wide sheet the filling lies even, and no lump tears the loaf.',
      word: { name: 'Sheet fold', means: 'spread thin, fill, and roll up again' },
    },
    'bulk.scatter': {
      title: 'Why leave an edge bare?',
      why: 'Filling at the edge leaks out and burns in the pot.',
    },
    'bulk.roll': {
      title: 'Why roll it up?',
      why: 'Layers of dough spread the filling and hold the loaf tall.',
    },
    'bulk.proving': {
      title: 'How far should it rise?',
      why: 'Not by the clock alone: by what you see. Three signs together tell it.',
      signs: {
        riseMarks: { name: 'It has grown', means: 'Look at the mark on the tub.' },
        domeEdge: { name: 'A domed edge', means: 'The dough bends down where it meets the tub.' },
        bubbles: { name: 'Bubbles', means: 'Some on top, many at the side.' },
        gonePast: { name: 'Gone past', means: 'Flat, sunk and sticky: it waited too long.' },
      },
    },
    'shape.divide': {
      title: 'Why even pieces?',
      why: 'Loaves of the same weight are done at the same time.',
      word: { name: 'Divide', means: 'cut the dough into loaves by weight' },
    },
    'shape.preshape': {
      title: 'Why shape it twice?',
      why: 'A first loose round gives it a skin, so that the last shape holds.',
      word: { name: 'Preshape', means: 'a first, loose round' },
    },
    'shape.benchRest': {
      title: 'Why rest again?',
      why: 'Tight dough tears. In a few minutes it lets go.',
      word: { name: 'Bench rest', means: 'a short rest before the last shape' },
    },
    'shape.finalShape': {
      title: 'Why so tight?',
      why: 'A tight skin makes the loaf rise up, not spread out.',
      word: { name: 'Seam', means: 'where the dough was folded shut' },
    },
    'shape.basket': {
      title: 'Why a basket?',
      why: 'Soft dough runs flat. The basket holds it while it rises.',
      word: { name: 'Basket', means: 'a floured basket that a loaf rises in' },
    },
    'shape.scoop': {
      title: 'Why a spoon?',
      why: 'Rye dough is sticky and holds no shape. A tin does that.',
    },
    'proof.toFridge': {
      title: 'Why into the cold?',
      why: 'Cold slows the rise, so that you can sleep. The loaf grows firm and full of flavour.',
      word: { name: 'Cold proof', means: 'the last rise, slow, in the fridge' },
    },
    'proof.retard': {
      title: 'What tells it is ready?',
      why: 'It grows a little, up to the rim. A dent alone tells little of a cold loaf.',
    },
    'proof.warm': {
      title: 'What tells it is ready?',
      why: 'Press it with a floured finger, and look at the dent.',
      word: { name: 'Dent test', means: 'press a finger in, see how it comes back' },
      signs: {
        pokeSpringsBack: { name: 'Springs right back', means: 'It needs more time.' },
        pokeSlow: { name: 'Comes back slowly', means: 'It is ready.' },
        pokeStays: { name: 'The dent stays', means: 'It is past its best: bake it now.' },
      },
    },
    turnOn: {
      title: 'Why heat the pot too?',
      why: 'A hot pot lifts the loaf at once, and keeps its steam in.',
      word: { name: 'Pot', means: 'thick iron with a lid, that holds heat' },
    },
    before: {
      title: 'Why a list now?',
      why: 'Hot iron leaves no time to look for a mitt.',
    },
    score: {
      title: 'Why cut the loaf?',
      why: 'It must open somewhere. The cut says where.',
      word: { name: 'Score', means: 'cut the skin just before the oven' },
    },
    lidded: {
      title: 'Why is the lid on?',
      why: 'Steam keeps the skin soft while the loaf rises. Then the lid comes off for the crust.',
      signs: {
        colours: { name: 'Pale to dark', means: 'Golden brown is the aim, never black.' },
        judgeCrust: { name: 'A golden crust', means: 'Brown all over, darker at the cut.' },
        knock: { name: 'A hollow knock', means: 'Knock its base: it sounds like a drum.' },
      },
    },
    'cool.cooling': {
      title: 'Why wait to cut?',
      why: 'Inside, it is still setting. Cut hot, the crumb turns gummy.',
      word: { name: 'Crumb', means: 'the inside of the loaf' },
    },
    'cool.note': {
      title: 'Why write it down?',
      why: 'One thing changed makes the next loaf better. You will not recall it next week.',
    },
  },
);
