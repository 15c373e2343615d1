import type * as english from '../words/small-10-12-tasks.ts';
import type { InTongue } from '../tongue.ts';

export const small1012Tasks: InTongue<typeof english.small1012Tasks> = {
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
    task: 'Setz dich weit weg. Schreib, wann du es riechst.',
    praise: 'Du hast geschrieben, wann du es gerochen hast.',
  },
  drain: {
    act: 'Lass die Einlage abtropfen',
    say: 'Nasse Einlage kann den Teig zerreißen.',
    task: 'Zähl die Tropfen. Dann wasch dir die Hände.',
    praise: 'Du hast die Tropfen gezählt.',
  },
  cut: {
    act: 'Sieh vom Stuhl aus zu',
    say: 'Das scharfe Messer haben Erwachsene.',
    task: 'Setz dich weit weg. Zeichne eine Erbse, so groß sie ist.',
    praise: 'Du hast eine Erbse gezeichnet.',
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
    say: 'Mehl muss bis in jede Rille.',
    task: 'Bemehle jeden Korb. Dann wasch dir die Hände.',
    praise: 'Du hast die Körbe bemehlt.',
  },
  grease: {
    act: 'Fette die Formen',
    say: 'Die Ecken brauchen es am meisten.',
    task: 'Pinsle jede Ecke. Dann wasch dir die Hände.',
    praise: 'Du hast jede Ecke gefettet.',
  },
  shelf: {
    act: 'Mach Platz im Kühl\u00adschrank',
    say: 'Rund um jeden Laib muss Luft sein.',
    task: 'Schieb die leichten Sachen zur Seite.',
    praise: 'Du hast die leichten Sachen geschoben.',
  },
  parchment: {
    act: 'Sieh vom Stuhl aus zu',
    say: 'Erwachsene schneiden das Papier zu.',
    task: 'Setz dich weit weg. Lies die Packung vom Papier vor.',
    praise: 'Du hast die Packung vorgelesen.',
  },
  kettle: {
    act: 'Hör von weit weg zu',
    say: 'Erwachsene kochen das Wasser.',
    task: 'Setz dich weit weg. Schreib auf, wie es klingt.',
    praise: 'Du hast aufgeschrieben, wie es klingt.',
  },
  fetch: {
    act: 'Sieh den nächsten Laib kommen',
    say: 'Erwachsene holen den nächsten kalten Laib.',
    task: 'Schreib auf, wie viele Laibe kalt bleiben.',
    praise: 'Du hast aufgeschrieben, wie viele kalt bleiben.',
  },
  rack: {
    act: 'Sieh, wie das Gitter kommt',
    say: 'Erwachsene stellen das Gitter hin.',
    task: 'Setz dich weit weg. Zeichne, wie die Laibe passen.',
    praise: 'Du hast gezeichnet, wie sie passen.',
  },
  tidyMix: {
    act: 'Räum den Tisch ab',
    say: 'In kaltem Wasser löst sich Teig von selbst.',
    task: 'Weich kleine Schüsseln ein. Dann wasch dir die Hände.',
    praise: 'Du hast die Schüsseln eingeweicht.',
  },
  tidyBulk: {
    act: 'Räum den Tisch ab',
    say: 'Kein Teig kommt in den Abfluss.',
    task: 'Wisch jede Ecke. Dann wasch dir die Hände.',
    praise: 'Du hast jede Ecke gewischt.',
  },
  tidyBench: {
    act: 'Räum den Tisch ab',
    say: 'Erst die Reste, dann das nasse Tuch.',
    task: 'Sammle die Reste. Dann wasch dir die Hände.',
    praise: 'Du hast die Reste gesammelt.',
  },
  rise45: {
    act: 'Schau auf die Wanne',
    say: 'Ein Blick auf den Strich sagt uns mehr.',
    task: 'Lies den Strich von der Seite.',
    praise: 'Du hast den Strich gelesen.',
  },
  rise70: {
    act: 'Schau auf die Wanne',
    say: 'Wir schauen wieder, wie er wächst.',
    task: 'Sag, ob er seit dem letzten Blick gestiegen ist.',
    praise: 'Du hast gesagt, ob er gestiegen ist.',
  },
  rise85: {
    act: 'Schau auf die Wanne',
    say: 'Wir sehen, ob er groß genug ist.',
    task: 'Zeichne die Wanne mit allen Strichen.',
    praise: 'Du hast die Striche der Wanne gezeichnet.',
  },
};
