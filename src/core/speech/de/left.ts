import type * as english from '../words/left.ts';
import type { InTongue } from '../tongue.ts';

export const clockAsk: InTongue<typeof english.clockAsk> = {
  care: 'Ging die Uhr des Tablets falsch? Sag es, und das Backen geht weiter.',
  press: 'Die Uhr ging falsch',
  said: 'Es steht wie bei deinem letzten Tastendruck. Prüf den Teig.',
};
export const left: InTongue<typeof english.left> = {
  levain: {
    headline: 'Wirf diesen Sauerteig weg',
    detail: 'Er stand tagelang. Spül das Glas heiß und fang neu an.',
    slab: 'Weg\u00adgeworfen',
    then: 'dann ist dieses Backen zu Ende',
    spoken: 'Wirf diesen Sauerteig weg. Er stand tagelang.',
  },
  dough: {
    headline: 'Wirf diesen Teig weg',
    detail: 'Er stand zu lange draußen. Back ihn nicht.',
    slab: 'Weg\u00adgeworfen',
    then: 'dann ist dieses Backen zu Ende',
    spoken: 'Wirf diesen Teig weg. Er stand zu lange draußen.',
  },
  loaves: {
    headline: 'Wirf diese Laibe weg',
    detail: 'Sie lagen tagelang im Kühl\u00adschrank. Back sie nicht.',
    slab: 'Alle weggeworfen',
    then: 'dann ist dieses Backen zu Ende',
    spoken: 'Wirf diese Laibe weg. Sie lagen tagelang im Kühl\u00adschrank.',
  },
};
