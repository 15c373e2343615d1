import type * as english from '../words/moved.ts';
import type { InTongue } from '../tongue.ts';

export const movedBy: InTongue<typeof english.movedBy> = {
  temperature: { sooner: 'Wärmer als geplant.', later: 'Kühler als geplant.' },
  sign: { sooner: 'Weiter als erwartet.', later: 'Langsamer als erwartet.' },
  correction: { sooner: 'Das ist berichtigt.', later: 'Das ist berichtigt.' },
};
export const movedTo: InTongue<typeof english.movedTo> = {
  sooner: 'Etwa {minutes} früher, nächster Blick {time}.',
  later: 'Etwa {minutes} später, nächster Blick {time}.',
  readySooner: 'Etwa {minutes} früher, so weit etwa {time}.',
  readyLater: 'Etwa {minutes} später, so weit etwa {time}.',
};
