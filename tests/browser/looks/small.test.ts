import { looksOf } from '../harness/looks-of.ts';

looksOf('small');
