import type * as english from '../words/save-a-file.ts';
import type { InTongue } from '../tongue.ts';

export const saveAFile: InTongue<typeof english.saveAFile> = {
  detail: 'Alles, was hier ist, Notizen und Fotos, wie sie sind.',
  names: 'Namen und Stimmen',
  marks: 'bleiben hier',
  named: 'nur diesmal',
  care: 'Wer die Datei hat, liest die Namen und hört die Stimmen.',
  slab: 'Speichern',
  sheet: 'Messwerte als Tabelle',
  sheetFile: 'messwerte.csv',
  noReadings: 'noch kein Messwert',
  handed: {
    shared: 'weitergegeben',
    saved: 'gespeichert',
    left: 'nicht gespeichert',
    failed: 'nicht gespeichert',
  },
  keepsakesLeftOut:
    'Notizen, Fotos und Stimmen waren nicht lesbar. Die gespeicherte Datei hat alles außer ihnen.',
  othersLeftOut:
    'Ein Tagebuch von einem anderen Tablet war nicht lesbar. Die gespeicherte Datei hat alles außer ihm.',
};
