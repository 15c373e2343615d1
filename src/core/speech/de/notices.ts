import type * as english from '../words/notices.ts';
import type { InTongue } from '../tongue.ts';

export const reasons: InTongue<typeof english.reasons> = {
  formulaUnreadable:
    'Dieses Rezept ist nicht lesbar bei {path}: {expected} war erwartet, {got} kam. Berichtige es dort.',
  loavesOutside: '{got} Laibe gehen nicht. Wähl eine ganze Zahl, {least} bis {most}.',
  pieceOutside: 'Ein Stück mit {got} geht nicht. Wähl {least} bis {most}.',
  breadOutside: 'Ein gebackener Laib mit {got} geht nicht. Wähl {least} bis {most}.',
  amountOutside: '{got} davon ergibt keinen Teig. Gib ein, was da ist.',
  binEmpty:
    'Zu wenig da, sogar um das Anstellgut zu füttern: {flour}. Kauf nach, oder ändere die Mehle.',
  bowlFlours: 'Die Mehle in der Schüssel machen zusammen {sum} %. Bring sie auf 100.',
  lineUnknown: 'In diesem Rezept gibt es nicht: {line}. Wähl eine Zeile, die es hat.',
  levainTooWet:
    'Der Sauerteig bringt {short} % vom Mehl zu viel Wasser. Nimm weniger Sauerteig, oder einen festeren.',
  perishableRetarded:
    '{filling}: verdirbt in langer Gare. Lass es weg, oder gib es kalt beim Formen dazu und back binnen 2 Stunden.',
  levainFlourShort:
    'Der Sauerteig will {short} mehr, als der Teig hat: {flour}. Füttere anderes Mehl, oder weniger.',
  waterShort:
    'Der Sauerteig bringt {short} zu viel Wasser. Nimm weniger Sauerteig, oder einen festeren.',
};
export const warnings: InTongue<typeof english.warnings> = {
  saltHigh: 'Salz: {salt} %, über den üblichen {most}. Der Teig geht langsam.',
  saltLow: 'Salz: {salt} %, unter den üblichen {least}. Der Teig geht schnell und wird weich.',
  saltWithFilling:
    'Salz: {salt} % mit {bring} aus der Einlage; {most} ist das Äußerste. Nimm etwas aus dem Teig.',
  wetFilling:
    'Mit dem, was die Einlage bringt, ist das Wasser {water} % vom Mehl; über {most} läuft der Teig. Lass sie abtropfen und trockne sie gut.',
  perishableFilling:
    '{filling}: verdirbt. Erst beim letzten Formen aus dem Kühl\u00adschrank, binnen 2 Stunden im Ofen. Auch das Brot bleibt kalt.',
  cheeseStands:
    '{filling}: darf bei bis zu {most} stehen, wenn er hart, gereift und pasteurisiert ist. Anderer Käse verdirbt.',
  fillingFrozen: '{filling}: im Kühl\u00adschrank auftauen lassen, dann abtropfen und trocknen.',
  fillingCold: '{filling}: kalt. Nimm es eine Stunde vorher heraus, sonst kühlt es den Teig.',
  hydrationOutside:
    'Wasser ist {hydration} % vom Mehl; üblich sind {least} bis {most}. Halt erst etwas zurück.',
  pffOutside:
    '{pff} % vom Mehl sind im Sauerteig; üblich sind {least} bis {most}. Sieh oft nach dem Teig.',
  fillingOutside:
    'Einlage ist {share} % vom Teig; üblich sind {least} bis {most}. Zu viel zerreißt den Teig.',
  feedDisagrees:
    'Füttern heißt {flour} Mehl auf {water} Wasser; der Sauerteig hat {hydration} %. Das Wasser richtet sich nach dem Sauerteig.',
  fillingAtShaping:
    'Ohne Laminieren kommt die Einlage nicht hinein. Gib sie beim letzten Formen dazu.',
  heavyDough: '{dough} ist viel für eine Schüssel von Hand. Mische in Schüsseln bis {most}.',
  processOutside:
    '{part}: {minutes} min; üblich sind {least} bis {most}. Schau auf den Teig, nicht auf die Uhr.',
  riseOutside: 'Anstieg {rise} %; üblich sind {least} bis {most}. Sieh gegen Ende oft nach.',
  scoopNeedsTin: 'Gelöffelter Teig läuft: er braucht eine Form, die ihn hält.',
  ryeOutside:
    '{rye} % Roggen ist mehr, als die Uhr kennt; höchstens {most}. Trau deinen Augen, nicht ihren Stunden.',
  fridgeOutside:
    'Kühl\u00adschrank auf {fridge}; gewünscht sind {least} bis {most}. Über {most}: stell ihn kälter.',
};
export const swaps: InTongue<typeof english.swaps> = {
  swapped: '{name} statt {was}, gleich viel Gewicht.',
  swappedAllergens: '{name} statt {was}, gleich viel Gewicht. Aufs Etikett muss: {allergens}.',
  herbsDried:
    '{name}: halb so viel Gewicht wie frisch, {pct} %. Nach Volumen sagen Bücher ein Drittel.',
  herbsFresh:
    '{name}: doppelt so viel Gewicht wie trocken, {pct} %. Nach Volumen sagen Bücher dreimal.',
};
export const stepReasons: InTongue<typeof english.stepReasons> = {
  spoonWantsTin: 'Gelöffelter Teig läuft. Wähl erst die Form zum Backen.',
  sheetWantsFilling: 'Beim Laminieren kommt eine Einlage hinein. Gib erst eine dazu.',
  spoonNoSheet: 'Gelöffelter Teig ist zu weich zum Laminieren.',
  touchesFull: 'Schon {most}-mal falten, mehr geht nicht. Nimm erst eines heraus.',
  noFold: 'Es gibt kein Falten zum Herausnehmen.',
};
export const lentReasons: InTongue<typeof english.lentReasons> = {
  lentUnread: 'Deine eigenen Brote waren nicht lesbar. Öffne die Probe noch einmal.',
};
export const processParts: InTongue<typeof english.processParts> = {
  rest: 'Ruhe',
  fold: 'Pause vor dem Falten',
  laminate: 'Laminieren nach dem Mischen',
  benchRest: 'Teigruhe',
  counter: 'Draußen',
  retard: 'Im Kühl\u00adschrank',
  warm: 'Warme Stückgare',
  preheat: 'Ofen heizt',
  lidded: 'Deckel oder Dampf',
  open: 'Offen backen',
  recovery: 'Ofen heizt nach',
  cool: 'Auskühlen',
};
