import type * as english from '../words/plan.ts';
import type { InTongue } from '../tongue.ts';

// Each begins with a word that may be written small: within a sentence its first letter is.
export const planTouches: InTongue<typeof english.planTouches> = {
  'feed levain': 'Füttern zum Backen',
  mix: 'Mischen von Mehl und Wasser',
  'salt and water': 'Einarbeiten von Salz und Wasser',
  fold: 'Falten {count}',
  lamination: 'Laminieren mit der Einlage',
  divide: 'Teilen',
  shape: 'Formen',
  spoon: 'Löffeln in die Form',
  'to fridge': 'Kalt stellen',
  'oven on': 'Anheizen',
  load: 'Einschieben {count}',
  'lid lift': 'Abheben der Deckel, Ladung {count}',
  vent: 'Öffnen für den Dampf, Ladung {count}',
  unload: 'Herausnehmen, Ladung {count}',
};
export const planWaits: InTongue<typeof english.planWaits> = {
  mix: 'Ruhe',
  'salt and water': 'Stockgare',
  divide: 'Teigruhe',
  shape: 'Stückgare',
  spoon: 'Stückgare',
  'to fridge': 'Zeit im Kühl\u00adschrank',
  'oven on': 'Heizen',
};
export const planSlack: InTongue<typeof english.planSlack> = {
  fine: 'Gut bis {time}.',
  last: 'Spätestens {time}.',
};
export const planChanges: InTongue<typeof english.planChanges> = {
  title: 'Für {time} passt nichts.',
  titleFrom: 'Ab {time} passt nichts.',
  cannot: 'Das lässt sich nicht planen',
  anyOne: 'Eins davon würde reichen:',
  together: 'Nur diese zusammen würden reichen:',
  one: 'Das würde reichen:',
  none: 'Keine kleine Änderung würde reichen.',
  because: 'Im Weg: {name}.',
  planFrom: 'es bleibt zu wenig Zeit',
  blockedEnd: '{name} nur bis {time}, {length} weniger.',
  blockedStart: '{name} erst ab {time}, {length} später.',
  due: '{bake}: fertig {time}, {length} später.',
  start: '{bake}: anfangen {time}, {length} später.',
  longer: '{bake}: {length} mehr {part}. Das Brot kann leiden.',
  shorter: '{bake}: {length} weniger {part}. Das Brot kann leiden.',
  hotOven: '{bake}: den Ofen {length} länger heiß halten.',
  fewerLoads: '{bake}: nur {count} Ladungen. Mehr Töpfe, oder weniger Laibe.',
  oneLoad: '{bake}: nur eine Ladung. Mehr Töpfe, oder weniger Laibe.',
  dropTouch: '{bake}: lass weg: {touch}.',
  unpin: '{bake}: „{touch}“ darf weg von {time}.',
  ovenTimer: '{bake}: lass die Zeituhr des Ofens ihn anmachen.',
};
export const planFilling: InTongue<typeof english.planFilling> = {
  perishableRetarded: '{filling}: verdirbt in langer kalter Gare.',
  perishableLaminated: '{filling}: verdirbt in der Stockgare.',
  perishableLoads: '{filling}: muss binnen {length} im Ofen sein. Die letzte Ladung wäre zu spät.',
  perishableSlow: '{filling}: muss binnen {length} im Ofen sein. Die Stückgare dauert länger.',
  leaveOut: 'Lass es weg.',
  sameDay: 'Back am selben Tag.',
  atShaping: 'Gib es kalt dazu, beim letzten Formen.',
  oneLoad: 'Back es in einer Ladung.',
  coolerKitchen: 'Back an einem kühleren Tag.',
};
