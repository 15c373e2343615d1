import type * as english from '../words/kitchen-warnings.ts';
import type { InTongue } from '../tongue.ts';

export const kitchenWarnings: InTongue<typeof english.kitchenWarnings> = {
  bowlsSplit: 'Mische {count} Schüsseln zu {grams}. Fang sie {minutes} versetzt an.',
  bowlsShort: 'Es braucht {count} Schüsseln zu {grams}. Leih welche, oder mische nacheinander.',
  potSmall: 'Ein Topf mit {got} Litern ist zu klein. Mach diese Laibe leichter.',
  fridgeWarm: 'Dein Kühl\u00adschrank hat {got}: stell ihn erst kälter.',
  fridgeGroups: 'Diese zu kühlen dauert {got} h. Stell je {count} auf einmal kalt.',
  fridgeSmall: 'In den Kühl\u00adschrank passen {count} von {got} Laiben. Back den Rest zuerst.',
  potsNotHot:
    'Kalter Teig kann deine Töpfe springen lassen. Nimm blankes Gusseisen oder eine Form.',
  bakeHeatShort: 'Dein Ofen schafft nur {got}. Back länger: geh nach der Kruste.',
  preheatShort: 'Dein Ofen schafft nur {got}. Heiz länger vor.',
  coldAsk: 'Kalter Teig kann heiße Emaille absplittern lassen: frag erst den Hersteller.',
  potSmallHere: 'Dieser Topf ist zu klein für den Laib. Nimm einen anderen.',
  ovenDial: 'Dein Regler geht falsch. Für den Topf stell ihn auf {dial}.',
  ovenDialStone: 'Dein Regler geht falsch. Für den Stein stell ihn auf {dial}.',
  ovenSlow: 'Dein Ofen braucht {got} min. Warte so lange, auch nach dem Ruf.',
  knobPlastic: 'Ein Deckelknauf hier ist aus Plastik. Schraub ihn kalt ab.',
  parchmentLow: 'Dein Backpapier hält nur {got} aus. Lass es weg.',
};
