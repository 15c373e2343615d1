import type * as english from '../words/log-share.ts';
import type { InTongue } from '../tongue.ts';

export const logShare: InTongue<typeof english.logShare> = {
  title: 'Teile dieses Backen',
  detail: 'Eine Seite, die auf jedem Gerät aufgeht, ohne Netz.',
  in: 'Darin: Zeiten, Messwerte, Rufe, Ladungen, Gewichte und die Kurve.',
  out: 'Nicht darin: Namen, wer es aß, Stimmen.',
  note: 'Deine Worte',
  noteNone: 'keine',
  photos: 'Fotos',
  photosNone: 'keine',
  inPage: '{count} darin',
  outOfPage: 'weggelassen',
  noteIn: 'darin',
  careNote: 'Lies durch, was du getippt hast: es kann jemanden nennen.',
  carePhotos: 'Sieh die Fotos durch: sie können jemanden zeigen.',
  slab: 'Weitergeben',
  then: 'die Seite dieses Backens',
  back: 'Zurück',
  sheet: 'Als Tabelle',
  handed: {
    shared: 'Weitergegeben.',
    saved: 'Bei den Downloads dieses Geräts gespeichert.',
    left: 'Nicht weitergegeben. Es ist noch hier.',
    failed: 'Das ging nicht. Versuch es noch mal.',
  },
  fileName: '{name} {day}',
  file: {
    chart: 'Kurve',
    first: 'Auf einen Blick',
    photo: 'Foto {n} von {count}',
    band: 'Schraffiert: dort liegen vier von fünf Anstellgütern dieser Annahme. 1 ist das übliche Tempo.',
    lived:
      'Stunden, die der Teig lebte: gerade von Messwert zu Messwert, nach der heutigen Teiguhr. Vorhergesagt hat das nichts.',
    marks: 'Ein Kreuz ist ein seltsamer Messwert. Ein Dreieck ist ein Ruf.',
    foot: 'Geschrieben von Loafward. Die Seite hat kein Skript und fragt kein Netz.',
  },
};
