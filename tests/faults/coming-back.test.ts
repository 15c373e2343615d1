import { LEFT, testComingBack } from '../browser/harness/coming-back.ts';

testComingBack(LEFT);
