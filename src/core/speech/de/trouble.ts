import type * as english from '../words/trouble.ts';
import type { InTongue } from '../tongue.ts';

export const trouble: InTongue<typeof english.trouble> = {
  storeClosed:
    'Dieser Browser lässt das Tagebuch nicht speichern. Das Backen geht weiter: speichere es als Datei.',
  storeUnread:
    'Das Tagebuch ging nicht auf: ein Backen darin ist nicht zu sehen und ruft nicht. Lade die Seite neu.',
  storeFull:
    'Das Tablet ist voll. Das Backen geht im Speicher weiter: speichere es als Datei, dann schaff Platz.',
  storeTaken:
    'Eine andere Seite hat zuerst gespeichert. Sieh, wo das Backen steht, dann drück noch mal.',
  storeGone:
    'Das gespeicherte Tagebuch wurde gelöscht. Es ist aus dem Speicher neu geschrieben: speichere es als Datei.',
  logNewer: 'Tagebuch-Fassung {version} ist neuer als diese Seite. Lade erst die neue Fassung.',
  logUnreadable:
    'Zeile {seq} im Tagebuch ist nicht lesbar bei {path}: {expected} war erwartet, {got} kam. Mach ab Zeile {last} weiter, oder speichere es als Datei.',
  logMismatch: 'Zeile {seq} falsch. Zurück am letzten guten Punkt: prüf ihn.',
  machineFailed:
    'Dieser Druck ließ sich nicht auswerten. Die letzte gute Stelle ist wieder da: drück noch mal.',
  equipmentUnreadable:
    'Deine Küche ist nicht lesbar bei {path}: {expected} war erwartet, {got} kam. Stell sie neu ein.',
  kitchenRange: 'Hier nur {range}. Du hast {got} getippt: ändere es.',
  clockBack: 'Die Uhr des Tablets ging zurück. Prüf die Zeit, und sieh jetzt nach allem Heißen.',
  pressRefused: 'Dieser Schritt ist schon weiter. Schau auf den Bildschirm, dann drück.',
  nothingToTakeBack: 'Es gibt nichts zurückzunehmen. Mach von hier weiter.',
  insecure:
    'So geöffnet läuft die Seite nicht ohne Netz, und der Bildschirm geht aus. Öffne sie mit https.',
  soundMissing: 'Hier geht kein Ton. Stell für jeden heißen Schritt einen zweiten Wecker.',
  voiceLost:
    'Manche Worte waren nicht zu hören. Lies sie auf dem Bildschirm: sonst ist nichts verloren.',
};
export const whereAreYou: InTongue<typeof english.whereAreYou> = {
  headline: 'Sag, wo dein Teig ist',
  detail: 'Das Tagebuch weiß es nicht. Wähl den Schritt, bei dem du bist.',
  slab: 'Hier bin ich',
  then: 'das Backen geht dort weiter',
  spoken: 'Sag, wo dein Teig ist. Wähl den Schritt, bei dem du bist.',
};
export const troubleLines: InTongue<typeof english.troubleLines> = {
  saveAsFile: 'Als Datei speichern',
  loadAgain: 'Neu laden',
};
