import type * as english from '../words/circle-dough.ts';
import type { InTongue } from '../tongue.ts';

export const doughPage: InTongue<typeof english.doughPage> = {
  title: 'Teig und Ladungen',
  detail: '{date}: {loaves}.',
  none: 'An diesem Tag bekommt noch niemand Brot.',
  bread: 'Brot',
  loaves: 'Laibe',
  piece: 'Stück',
  loads: 'Ladungen',
  sized: '{name}, {grams}',
  troubles: 'Was sich nicht backen lässt',
  trouble: '{name}: {words}',
  breadGone: '{loaves} davon bestellt, und die Liste im Buch hat es nicht mehr.',
  nowhere: '{name}: nichts in dieser Küche bäckt das.',
  bowls: 'Nach Schüsseln',
  levain: 'Sauerteig',
  hours: 'Ladungen',
  slab: 'Tag planen',
  then: 'nach der Uhr',
  next: 'Nächster Teig, {step} von {steps}',
};
export const doughBowls: InTongue<typeof english.doughBowls> = {
  one: 'Eine Schüssel, {grams}',
  of: 'Für {name}.',
  together: 'Hier zusammen gemischt. Im Tagesplan ist jedes Brot ein eigenes Backen.',
  later: 'Kommt dazu, wenn er aus der Schüssel ist',
  filling: '{name}, {loaves}',
};
export const doughLevain: InTongue<typeof english.doughLevain> = {
  title: 'Setz {grams} Sauerteig an',
  detail: '{grams} kommen in den Teig, {keepBack} bleiben für das nächste Mal.',
  line: 'Zu wiegen',
  grams: 'Ein Glas',
  feed: 'Füttern für {name}: {time}, {ratio}.',
  feedPlain: 'Füttern für {name}: {time}.',
  noPlan: 'Wann du fütterst, steht da, sobald der Tag geplant ist.',
};
export const doughLoads: InTongue<typeof english.doughLoads> = {
  title: '{loads} Ladungen, {minutes}',
  at: 'Erste rein {time}, letzte raus {until}.',
  counted: 'Gezählt ab der ersten.',
  bread: 'Brot',
  loads: 'Ladungen',
  first: 'Erste rein',
  out: 'Letzte raus',
  cool: 'Kühl',
  start: 'sofort',
};
export const layAsk: InTongue<typeof english.layAsk> = {
  many: 'Der Tagesplan fasst {most} auf einmal',
  manyDetail: 'Was zuerst geholt wird, ist geplant. Nicht dabei: {name}.',
  manyYes: 'Diese planen',
  stands: 'Es gibt schon einen Plan',
  standsDetail: 'Nimmst du den neuen, ersetzt er ihn.',
  standsYes: 'Weiter',
  rules: 'Sieh erst die Regeln nach',
  rulesDetail:
    'Für Verkauf aus der Hausküche gelten örtliche Regeln: {filling}. Hast du nachgesehen?',
  rulesCare: 'Dein Amt vor Ort sagt dir, welche gelten.',
  rulesYes: 'Nachgesehen',
  notYet: 'Noch nicht, weiter',
};
