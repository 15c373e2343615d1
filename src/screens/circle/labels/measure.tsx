import { render } from 'solid-js/web';
import type { Label } from '../../../core/circle/label/label.ts';
import type { Measure } from './fit.ts';
import { LabelCard } from './LabelCard.tsx';
import './LabelSheets.css';

/** CSS pixels a millimetre of paper, by CSS's own definition of both. */
const PX = 96 / 25.4;

/** How high a label comes out on paper, laid out of sight by the same rules as it is printed. */
export const measureLabel =
  (label: Label, paper: 'sheet' | 'roll'): Measure =>
  (width, em) => {
    const host = document.createElement('div');
    host.className = 'label-measured label-place';
    host.dataset['on'] = paper;
    host.setAttribute('aria-hidden', 'true');
    host.style.setProperty('--width', String(width));
    host.style.setProperty('--em', String(em));
    document.body.append(host);
    const undo = render(() => <LabelCard label={label} />, host);
    const { height } = host.getBoundingClientRect();
    undo();
    host.remove();
    return Math.ceil((height / PX) * 10) / 10;
  };
