import type * as english from '../words/plan.ts';
import type { InTongue } from '../tongue.ts';

export const planTouches: InTongue<typeof english.planTouches> = {
  'feed levain': 'Rafraîchi du levain',
  mix: 'Mélange farine et eau',
  'salt and water': 'Sel et bassinage',
  fold: 'Rabat {count}',
  lamination: 'Étirage avec garniture',
  divide: 'Division',
  shape: 'Façonnage',
  spoon: 'Mise en moule',
  'to fridge': 'Mise au frigo',
  'oven on': 'Four allumé',
  load: 'Enfournement {count}',
  'lid lift': 'Couvercles ôtés, tour {count}',
  vent: 'Vapeur dehors, tour {count}',
  unload: 'Sortie du four, tour {count}',
};

export const planWaits: InTongue<typeof english.planWaits> = {
  mix: 'repos',
  'salt and water': 'pointage',
  divide: 'détente',
  shape: 'apprêt',
  spoon: 'apprêt',
  'to fridge': 'temps au frigo',
  'oven on': 'chauffe',
};

export const planSlack: InTongue<typeof english.planSlack> = {
  fine: 'Bien jusqu’à {time}.',
  last: 'Pas après {time}.',
};

export const planChanges: InTongue<typeof english.planChanges> = {
  title: 'Aucun plan pour {time}.',
  titleFrom: 'Aucun plan à partir de {time}.',
  cannot: 'Cela ne peut se prévoir',
  anyOne: 'Une seule de ces choses suffirait :',
  together: 'Seules ces choses ensemble suffiraient :',
  one: 'Ceci suffirait :',
  none: 'Aucun petit changement ne suffirait.',
  because: 'Ce qui gêne : {name}.',
  planFrom: 'il reste trop peu de temps',
  blockedEnd: '{name} seulement jusqu’à {time}, {length} de moins.',
  blockedStart: '{name} seulement dès {time}, {length} plus tard.',
  due: '{bake} : prêt {time}, {length} plus tard.',
  start: '{bake} : commencer {time}, {length} plus tard.',
  longer: '{bake} : {part}, {length} de plus. Le pain peut en souffrir.',
  shorter: '{bake} : {part}, {length} de moins. Le pain peut en souffrir.',
  hotOven: '{bake} : garder le four chaud {length} de plus.',
  fewerLoads: '{bake} : {count} tours seulement. Plus de cocottes, ou moins de pains.',
  oneLoad: '{bake} : un seul tour. Plus de cocottes, ou moins de pains.',
  dropTouch: '{bake} : sans {touch}.',
  unpin: '{bake} : laisser « {touch} » bouger de {time}.',
  ovenTimer: '{bake} : laisser la minuterie allumer le four.',
};

export const planFilling: InTongue<typeof english.planFilling> = {
  perishableRetarded: 'Se gâte dans une longue pousse froide : {filling}.',
  perishableLaminated: 'Se gâte pendant le pointage : {filling}.',
  perishableLoads: '{filling} : au four sous {length}. Le dernier tour serait en retard.',
  perishableSlow: '{filling} : au four sous {length}. L’apprêt est plus long.',
  leaveOut: 'Enlevez-la.',
  sameDay: 'Cuisez le jour même.',
  atShaping: 'Ajoutez-la froide, au façonnage.',
  oneLoad: 'Cuisez en un seul tour.',
  coolerKitchen: 'Cuisez un jour plus frais.',
};
