import { makeMemorySettings } from '../../fakes/memory-settings.ts';
import { makeSound } from '../../../src/adapters/sound/sound.ts';
import { makeSpeaker } from '../../../src/adapters/speaker/speaker.ts';

/** A page that has nothing but calls and the voice, for a test to ring, to have say, and to hear. */
const sound = makeSound();
const speaker = makeSpeaker({
  settings: makeMemorySettings(),
  context: sound.context,
  later(ms, then) {
    const timer = setTimeout(then, ms);
    return () => clearTimeout(timer);
  },
});
const button = document.createElement('button');
const tell = () => (button.textContent = sound.state());
button.addEventListener('click', () => void sound.arm());
sound.onState(tell);
document.body.append(button);
tell();
const losses: number[] = [];
speaker.onLost(() => losses.push(Date.now()));
Object.assign(globalThis, { sound, speaker, losses });
