import type * as english from '../words/log.ts';
import type { InTongue } from '../tongue.ts';

export const log: InTongue<typeof english.log> = {
  title: 'Journal',
  edge: 'Les fournées passées',
  opening: 'Le journal s’ouvre.',
  closed: 'Le journal ne peut s’ouvrir',
  closedDetail: 'Rien n’en est perdu. Ouvrez cette page à nouveau.',
  gone: 'Cette fournée n’est plus au journal.',
};
