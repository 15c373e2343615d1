import type * as english from '../words/small-7-9-tasks.ts';
import type { InTongue } from '../tongue.ts';

export const small79Tasks: InTongue<typeof english.small79Tasks> = {
  soak: {
    act: 'Weich die Samen ein',
    say: 'Samen trinken Wasser und werden weich.',
    task: 'Löffle die Samen hinein. Dann wasch dir die Hände.',
    praise: 'Du hast die Samen hinein\u00adgelöffelt.',
  },
  takeOut: {
    act: 'Nimm den Käse heraus',
    say: 'Hartkäse wird auf dem Tisch wärmer.',
    task: 'Lies die Packung. Dann wasch dir die Hände.',
    praise: 'Du hast die Packung gelesen.',
  },
  toast: {
    act: 'Sieh von weit weg zu',
    say: 'Erwachsene rösten im heißen Ofen.',
    task: 'Setz dich weit weg. Sag, wann du es riechst.',
    praise: 'Du hast gesagt, wann du es gerochen hast.',
  },
  drain: {
    act: 'Lass die Einlage abtropfen',
    say: 'Trockene Einlage bleibt, wo sie liegt.',
    task: 'Zähl die Tropfen. Dann wasch dir die Hände.',
    praise: 'Du hast die Tropfen gezählt.',
  },
  cut: {
    act: 'Sieh vom Stuhl aus zu',
    say: 'Das scharfe Messer haben Erwachsene.',
    task: 'Setz dich weit weg. Mal eine Erbse, so groß sie ist.',
    praise: 'Du hast eine Erbse gemalt.',
  },
  coat: {
    act: 'Bestäube die Einlage',
    say: 'Mit Mehl bleibt die Einlage an ihrem Platz.',
    task: 'Stäube mit dem Löffel. Dann wasch dir die Hände.',
    praise: 'Du hast die Einlage bestäubt.',
  },
  bench: {
    act: 'Mach den Tisch nass',
    say: 'Auf etwas Wasser gleitet der Teig.',
    task: 'Mach den Tisch nass. Dann wasch dir die Hände.',
    praise: 'Du hast den Tisch nass gemacht.',
  },
  baskets: {
    act: 'Bemehle die Körbe',
    say: 'Mit Mehl kleben die Laibe nicht.',
    task: 'Bemehle einen Korb. Dann wasch dir die Hände.',
    praise: 'Du hast einen Korb bemehlt.',
  },
  grease: {
    act: 'Fette die Formen',
    say: 'Mit Fett rutscht das Brot gut heraus.',
    task: 'Pinsle jede Ecke. Dann wasch dir die Hände.',
    praise: 'Du hast jede Ecke gefettet.',
  },
  shelf: {
    act: 'Mach Platz im Kühl\u00adschrank',
    say: 'Die Laibe brauchen ein freies Fach.',
    task: 'Nimm leichte Sachen aus dem Fach.',
    praise: 'Du hast die leichten Sachen weggeräumt.',
  },
  parchment: {
    act: 'Sieh vom Stuhl aus zu',
    say: 'Erwachsene schneiden das Papier zu.',
    task: 'Setz dich weit weg. Mal einen Laib auf Papier.',
    praise: 'Du hast einen Laib gemalt.',
  },
  kettle: {
    act: 'Hör von weit weg zu',
    say: 'Erwachsene kochen das Wasser.',
    task: 'Setz dich weit weg. Sag, wann du es blubbern hörst.',
    praise: 'Du hast gesagt, wann es blubberte.',
  },
  fetch: {
    act: 'Sieh den nächsten Laib kommen',
    say: 'Erwachsene holen den nächsten kalten Laib.',
    task: 'Sag, wie viele Laibe kalt bleiben.',
    praise: 'Du hast die kalten Laibe gezählt.',
  },
  rack: {
    act: 'Sieh, wie das Gitter kommt',
    say: 'Erwachsene stellen das Gitter hin.',
    task: 'Setz dich weit weg. Rate, wie viele Laibe passen.',
    praise: 'Du hast geraten, wie viele passen.',
  },
  tidyMix: {
    act: 'Räum den Tisch ab',
    say: 'Die Schüsseln liegen in kaltem Wasser.',
    task: 'Weich die Löffel ein. Dann wasch dir die Hände.',
    praise: 'Du hast die Löffel eingeweicht.',
  },
  tidyBulk: {
    act: 'Räum den Tisch ab',
    say: 'Ein nasses Tuch nimmt das letzte Mehl weg.',
    task: 'Wisch jede Ecke. Dann wasch dir die Hände.',
    praise: 'Du hast jede Ecke gewischt.',
  },
  tidyBench: {
    act: 'Räum den Tisch ab',
    say: 'Zuerst kommen alle Reste weg.',
    task: 'Sammle die Reste. Dann wasch dir die Hände.',
    praise: 'Du hast die Reste gesammelt.',
  },
  rise45: {
    act: 'Schau auf die Wanne',
    say: 'Die Striche zeigen, wie weit er ist.',
    task: 'Zähl die Striche von unten nach oben.',
    praise: 'Du hast die Striche gezählt.',
  },
  rise70: {
    act: 'Schau auf die Wanne',
    say: 'Wir schauen wieder, wie er wächst.',
    task: 'Schau gerade auf den Strich. Lies ihn vor.',
    praise: 'Du hast den Strich gelesen.',
  },
  rise85: {
    act: 'Schau auf die Wanne',
    say: 'Wir sehen, ob er groß genug ist.',
    task: 'Mal die Wanne mit allen Strichen.',
    praise: 'Du hast die Striche der Wanne gemalt.',
  },
};
