import { LEFT, testComingBack } from './harness/coming-back.ts';

// Each tablet once, hidden and asleep by turns; every way to be left is in tests/faults/coming-back.test.ts.
testComingBack(LEFT.filter(({ view, how }) => (view === 'small') === (how === 'hidden')));
