import type { EarAsk, EarTold } from '../../machines/ear-port.ts';
import type { Stop } from '../../machines/ports.ts';
import type { HouseEar } from '../screens/house-ear.ts';

/** Listens as soon as the note that says so is over: the microphone would hear it. */
export function listenBehindTone(
  ear: Pick<HouseEar, 'listen' | 'tone'>,
  ask: EarAsk,
  tell: (told: EarTold) => void,
  opens: boolean,
): Stop {
  if (!opens) return ear.listen(ask, tell);
  let stop: Stop = () => (wanted = false);
  let wanted = true;
  void ear.tone('open').then(() => {
    if (wanted) stop = ear.listen(ask, tell);
  });
  return () => stop();
}
