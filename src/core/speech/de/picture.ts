import type * as english from '../words/picture.ts';
import type { InTongue } from '../tongue.ts';

export const picture: InTongue<typeof english.picture> = {
  title: 'Sein Bild',
  none: 'Noch kein Bild',
  detail: 'Klein gespeichert, ohne Ort und Zeit. In der gespeicherten Datei; nie geteilt.',
  alt: 'Das Bild: {name}',
  camera: 'Nimm die Kamera',
  choose: 'Eins aus\u00ADwählen',
  drop: 'Wegnehmen',
  busy: 'Wird verkleinert',
};
export const pictureTold: InTongue<typeof english.pictureTold> = {
  none: 'Diese Datei ist kein Bild. Nichts ist geändert: wähl eine andere.',
  large:
    'Dieses Bild ist zu groß: höchstens 20 Megabyte und 60 Millionen Bildpunkte. Nichts ist geändert.',
  broken: 'Dieses Bild ist hier nicht lesbar. Nichts ist geändert: wähl ein anderes.',
  full: 'Das Tablet ist voll. Nichts ist geändert: schaff Platz, dann versuch es noch mal.',
  closed: 'Dieser Browser lässt keine Bilder behalten. Nichts ist geändert.',
  leftOut: 'Die Bilder waren nicht lesbar. Die gespeicherte Datei hat alles außer ihnen.',
};
