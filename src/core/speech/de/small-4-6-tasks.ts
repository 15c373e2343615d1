import type * as english from '../words/small-4-6-tasks.ts';
import type { InTongue } from '../tongue.ts';

export const small46Tasks: InTongue<typeof english.small46Tasks> = {
  soak: {
    act: 'Sieh, wie Samen nass werden',
    say: 'Die Samen baden im Wasser.',
    task: 'Such die Samen, die schwimmen.',
    praise: 'Du hast nach Samen gesucht, die schwimmen.',
  },
  takeOut: {
    act: 'Sieh, wie der Käse herauskommt',
    say: 'Der Käse wird auf dem Tisch wärmer.',
    task: 'Sag, welche Form der Käse hat.',
    praise: 'Du hast gesagt, wie der Käse aussieht.',
  },
  toast: {
    act: 'Sieh von weit weg zu',
    say: 'Erwachsene rösten im heißen Ofen.',
    task: 'Setz dich weit weg. Sag, wann du es riechst.',
    praise: 'Du hast gesagt, wann du es gerochen hast.',
  },
  drain: {
    act: 'Sieh, wie das Wasser abtropft',
    say: 'Wasser tropft von der Einlage ab.',
    task: 'Zähl die Tropfen, die du hörst.',
    praise: 'Du hast die Tropfen gezählt.',
  },
  cut: {
    act: 'Sieh vom Stuhl aus zu',
    say: 'Das scharfe Messer haben Erwachsene.',
    task: 'Setz dich weit weg. Zähl jeden Schnitt, den du hörst.',
    praise: 'Du hast jeden Schnitt gezählt.',
  },
  coat: {
    act: 'Sieh, wie Mehl dazukommt',
    say: 'Mit Mehl bleibt alles an seinem Platz.',
    task: 'Lass die Finger rieseln wie Schnee.',
    praise: 'Du hast mit den Fingern Schnee gemacht.',
  },
  bench: {
    act: 'Sieh, wie der Tisch nass wird',
    say: 'Mit Wasser klebt der Teig nicht.',
    task: 'Bring ein trockenes Tuch.',
    praise: 'Du hast ein trockenes Tuch gebracht.',
  },
  baskets: {
    act: 'Sieh, wie Mehl hineinkommt',
    say: 'Mit Mehl kleben die Laibe nicht.',
    task: 'Zähl die Körbe in der Reihe.',
    praise: 'Du hast die Körbe gezählt.',
  },
  grease: {
    act: 'Sieh, wie die Formen glänzen',
    say: 'Mit Fett rutscht das Brot gut heraus.',
    task: 'Zähl die Ecken an einer Form.',
    praise: 'Du hast die Ecken gezählt.',
  },
  shelf: {
    act: 'Mach Platz im Kühl\u00adschrank',
    say: 'Die Laibe brauchen ein freies Fach.',
    task: 'Zeig, wo die Laibe schlafen können.',
    praise: 'Du hast gezeigt, wo die Laibe schlafen.',
  },
  parchment: {
    act: 'Sieh vom Stuhl aus zu',
    say: 'Erwachsene schneiden das Papier zu.',
    task: 'Setz dich weit weg. Mal einen runden Laib.',
    praise: 'Du hast im Sitzen einen Laib gemalt.',
  },
  kettle: {
    act: 'Hör von weit weg zu',
    say: 'Erwachsene kochen das Wasser.',
    task: 'Setz dich weit weg. Horch auf das Wasser.',
    praise: 'Du hast auf das Wasser gehorcht.',
  },
  fetch: {
    act: 'Sieh den nächsten Laib kommen',
    say: 'Erwachsene holen den nächsten kalten Laib.',
    task: 'Denk dir einen Namen für den Laib aus.',
    praise: 'Du hast dir einen Namen ausgedacht.',
  },
  rack: {
    act: 'Sieh, wie das Gitter kommt',
    say: 'Erwachsene stellen das Gitter hin.',
    task: 'Setz dich weit weg. Mal Striche wie das Gitter.',
    praise: 'Du hast Striche wie das Gitter gemalt.',
  },
  tidyMix: {
    act: 'Sieh, wie Schüsseln einweichen',
    say: 'Die Schüsseln liegen in kaltem Wasser.',
    task: 'Falte ein sauberes Tuch einmal.',
    praise: 'Du hast ein Tuch gefaltet.',
  },
  tidyBulk: {
    act: 'Sieh zu beim Putzen',
    say: 'Der klebrige Tisch wird wieder sauber.',
    task: 'Such Flecken von Mehl. Zeig darauf.',
    praise: 'Du hast die Flecken gezeigt.',
  },
  tidyBench: {
    act: 'Sieh zu beim Putzen',
    say: 'Zuerst kommen alle Reste weg.',
    task: 'Leg die trockenen Löffel der Größe nach hin.',
    praise: 'Du hast die Löffel hingelegt.',
  },
  rise45: {
    act: 'Schau auf die Wanne',
    say: 'Der Teig klettert in der Wanne hoch.',
    task: 'Such den Strich, wo der Teig oben ist.',
    praise: 'Du hast den Strich gefunden.',
  },
  rise70: {
    act: 'Schau auf die Wanne',
    say: 'Wir sehen, wie hoch er gekommen ist.',
    task: 'Zähl die Striche bis zum Teig.',
    praise: 'Du hast bis zum Teig gezählt.',
  },
  rise85: {
    act: 'Schau auf die Wanne',
    say: 'Wir sehen, ob er groß genug ist.',
    task: 'Mal, wie hoch der Teig ist.',
    praise: 'Du hast gemalt, wie hoch er war.',
  },
};
