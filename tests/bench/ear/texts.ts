import type { EarPhrase } from '../../../src/core/ear/phrases.ts';

/** What the corpus says for each phrase. Any words would do: a phrase is what its person said when it was learned. */
export const SAYS: Readonly<Record<EarPhrase, string>> = {
  done: "That's done",
  takeBack: 'Take that back',
  sayAgain: 'Say that again',
  longer: 'How much longer?',
  hush: 'Hush please',
  reading: 'New reading',
  notYet: 'Not yet',
  ready: "It's ready",
  showMe: 'Show me how',
  lidOff: 'Lid is off',
  springs: 'Springs back',
  slowly: 'Slowly back',
  stays: 'It stays',
  yes: 'Yes',
  no: 'No',
  zero: 'Zero',
  one: 'One',
  two: 'Two',
  three: 'Three',
  four: 'Four',
  five: 'Five',
  six: 'Six',
  seven: 'Seven',
  eight: 'Eight',
  nine: 'Nine',
  point: 'Point',
};

/** What is listened for together: as a bench, a lid, a poked dent, a wait and a starter have it. */
export const SETS: readonly (readonly EarPhrase[])[] = [
  ['done', 'takeBack', 'sayAgain', 'longer'],
  ['done', 'notYet', 'ready', 'hush'],
  ['lidOff', 'takeBack', 'sayAgain'],
  ['springs', 'slowly', 'stays', 'takeBack'],
  ['reading', 'showMe', 'longer', 'done'],
];

/** Ordinary speech of a kitchen, some of it with the words of a phrase in it: thresholds are found on this … */
export const TUNING_SPEECH: readonly string[] = [
  'Have you fed the dog yet',
  'The oven in the hall is still warm',
  'Give it back to your sister',
  'Where is the salt',
  'We are out of butter again',
  'That is what I said',
  'Would you like some tea',
  'Open the window a little',
  'I will be there in a minute',
  'Slow down on the stairs',
  'Nobody told me about it',
  'The spring was late this year',
  'Stay where you are',
  'Is it Tuesday',
  'Three of them came by train',
  'Hold this for me please',
  'That one is mine',
  'My back hurts today',
  'Read me the next line',
  'How was it at the market',
  'He has done nothing all day',
  'Off you go',
  'Leave the lid on the pan',
  'You can say that twice',
];

/** … and the score is counted on this. */
export const SCORING_SPEECH: readonly string[] = [
  'Could you pass me the big wooden spoon please',
  'I think the neighbours are coming at four',
  'The cherries need to be drained before they go in',
  'Is that the door',
  'Wash your hands before you touch the bowl',
  'We had such a lovely walk by the harbour',
  'Where did you put the scales',
  'The radio says it will rain all week',
  'Mind the cat',
  'She said she would bring the flour back on Thursday',
  'How many eggs do we have left',
  'Put the kettle on would you',
  'That was a long day',
  'I am not going to do it again',
  'Take the other one',
  'Show your brother the picture',
  'It is so cold in here',
  'No we never had any',
  'Ready or not here I come',
  'He is off to school',
  'Please do not shout',
  'Did you read the new book',
  'Let me have a look at the lid',
  'Hang on a minute',
];

/** What is one sound, or not much more, away from a phrase of the first set. */
export const ALIKE: readonly string[] = [
  "That's fun",
  "That's Don",
  'Take that bag',
  'Bake that back',
  'Pay that again',
  'How much lager',
];
