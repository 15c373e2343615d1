import { inTongue } from '../tongue.ts';

/** What went wrong and what to do about it. Each says both. */
export const trouble = inTongue('trouble', 'trouble', {
  storeClosed: 'This browser will not let the log be saved. The bake goes on: save it as a file.',
  storeUnread:
    'The log could not be opened: a bake in it is not shown and does not call. Load the page again.',
  storeFull: 'The tablet is full. The bake goes on in memory: save it as a file, then make room.',
  storeTaken: 'Another page saved first. Look where the bake stands, then press again.',
  storeGone: 'The saved log was cleared. It has been written again from memory: save it as a file.',
  logNewer: 'Log version {version} is newer than this page. Load the new version first.',
  logUnreadable:
    'Row {seq} of the log could not be read at {path}: {expected} was wanted, {got} came. Go on from row {last}, or save it as a file.',
  logMismatch: 'Log row {seq} is off. The last good place is back: check it.',
  machineFailed: 'That press could not be worked out. The last good place is back: press again.',
  equipmentUnreadable:
    'Your kitchen’s settings cannot be read at {path}: {expected} was wanted, {got} came. Set them again.',
  kitchenRange: 'Here only {range}. You typed {got}: change it.',
  clockBack: 'The tablet’s clock went back. Check the time, and look at anything hot now.',
  pressRefused: 'That step has moved on. Look at the screen, then press.',
  nothingToTakeBack: 'There is nothing to take back. Go on from here.',
  insecure: 'Opened this way, the page cannot work offline or stay lit. Open it over https.',
  soundMissing: 'No sound can be made here. Set a second timer for every hot step.',
  voiceLost: 'Some words could not be heard. Read them on the screen: nothing else is lost.',
} as const);
export type Trouble = keyof typeof trouble;

/** Offered beside a trouble that threatens the log. */
const saveAsFile = 'Save as a file';

/** When the log cannot say where the dough is, the baker does. */
export const whereAreYou = inTongue('trouble', 'whereAreYou', {
  headline: 'Say where your dough is',
  detail: 'The log cannot tell. Choose the step you are at.',
  slab: 'I am here',
  then: 'the bake goes on from there',
  spoken: 'Say where your dough is. Choose the step you are at.',
} as const);

/** Of these, what is said by itself. */
export const troubleLines = inTongue('trouble', 'troubleLines', {
  saveAsFile,
  loadAgain: 'Load it again',
});
