import { makeSound } from '../../../src/adapters/sound/sound.ts';

/** A page that has nothing but the calls, for a test to ring and to hear. */
const sound = makeSound();
const button = document.createElement('button');
const tell = () => (button.textContent = sound.state());
button.addEventListener('click', () => void sound.arm());
sound.onState(tell);
document.body.append(button);
tell();
Object.assign(globalThis, { sound });
