import type * as english from '../words/read-a-file.ts';
import type { InTongue } from '../tongue.ts';

export const readAFile: InTongue<typeof english.readAFile> = {
  title: 'Lies eine gespeicherte Datei',
  detail: 'Erst siehst du, was kommt. Halten nimmt es dann auf.',
  choose: 'Datei auswählen',
  all: 'Alles kommt herein',
  goesOn: 'Von hier geht es weiter',
  beside: 'Ein Tagebuch von einem anderen Tablet',
  already: 'Alles ist schon da',
  found: 'Gebackenes darin: {count}. Letzter Eintrag: {date}.',
  none: 'Nichts Gebackenes darin, nur die Küche.',
  comes: 'Gebackenes, das kommt: {count}. Letzter Eintrag: {date}.',
  besideYours: 'Gebackenes, das neben deins kommt: {count}. Deins bleibt.',
  nothing: 'Nichts davon ist neu. Am Tagebuch ändert sich nichts.',
  circle: 'Vom Kreis kommt, was hier fehlt.',
  keepsakes: 'Von Notizen und Fotos kommt, was hier fehlt.',
  both: 'Von Kreis, Notizen und Fotos kommt, was hier fehlt.',
  hold: 'Zum Aufnehmen halten',
  holding: 'Wird aufgenommen',
  then: 'alles auf einmal',
  newer: 'Zeile {line} ist aus einer neueren Fassung. Lade erst diese Fassung.',
  unreadable:
    'Zeile {line} ist nicht lesbar bei {path}: {expected} war erwartet, {got} kam. Nichts wurde aufgenommen.',
  cut: 'Die Datei ist abgeschnitten: {got} von {expected} Zeilen kamen. Nichts wurde aufgenommen.',
  changed: 'Die Datei wurde seit dem Speichern geändert. Nichts wurde aufgenommen.',
  clash: 'Ihre Zeile {seq} sagt anderes als dieselbe Zeile hier. Nichts wurde aufgenommen.',
  differs: 'Ihre Schritte passen nicht bei Zeile {seq}. Nichts wurde aufgenommen.',
  failed: 'Sie ließ sich nicht schreiben. Schaff Platz auf dem Tablet, dann versuch es noch mal.',
  meanwhile: 'Inzwischen wurde hier etwas notiert. Wähl die Datei noch einmal.',
  closed: 'Was hier ist, ist gerade nicht lesbar. Wähl die Datei noch einmal.',
  otherLeftOut:
    'Ein Tagebuch von einem anderen Tablet fehlt. Seine Zeile {seq} ist nicht lesbar bei {path}: {expected} war erwartet, {got} kam.',
};
