import type * as english from '../words/sound-check.ts';
import type { InTongue } from '../tongue.ts';

export const soundCheck: InTongue<typeof english.soundCheck> = {
  title: 'Tontest',
  detail: 'Geh dorthin, wo du sein wirst. Tür zu. Hör auf drei Rufe.',
  play: 'Rufe abspielen',
  then: 'in zehn Sekunden',
  again: 'Noch mal abspielen',
  test: 'Alle Rufe testen',
  testing: 'Jeder Ruf, dann sein Name. Tipp irgendwo zum Stoppen.',
  noAlarm: 'Es ist eine Hilfe, kein Wecker. Stell für jeden heißen Schritt einen zweiten.',
  ask: 'Hast du alle drei gehört?',
  limits: 'Eine geschlossene Tür schluckt viel Ton. Keine Seite kennt die Lautstärke.',
  mute: 'Noch geht kein Ton. Spiel sie noch mal ab.',
  answers: {
    yes: { label: 'Ich habe sie gehört', means: 'Rufe erreichen dich dort' },
    no: { label: 'Ich nicht', means: 'Rufe können dir entgehen' },
    sightOnly: { label: 'Nur sehen', means: 'Du siehst selbst nach' },
  },
  results: { yes: 'Gut gehört', no: 'Nicht gehört', sightOnly: 'Nur sehen' },
  means: {
    yes: 'Prüf wieder, wenn Tür, Tablet oder Lautstärke anders ist.',
    no: 'Stell das Tablet lauter oder öffne die Tür. Dann spiel sie noch mal ab.',
    sightOnly: 'Schau oft auf den Bildschirm. Rufe ertönen noch: verlass dich nicht auf sie.',
  },
  result: '{name}, {date}',
  notDone: 'Noch nicht gemacht',
};
