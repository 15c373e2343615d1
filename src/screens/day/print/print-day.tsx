import { render } from 'solid-js/web';
import type { DayPlan } from '../../../core/day/laid/day-plan.ts';
import type { House } from '../../house.ts';
import { PrintedDay } from './PrintedDay.tsx';
import { printView } from './print-view.ts';

/** Prints a plan. What was laid beside the page for it goes once it is printed, or printed anew. */
let last: (() => void) | null = null;

/**
 * One page of paper. It is laid beside the program and shown to the printer alone; some devices print
 * only after this has come back, so it stays until they say that they have.
 */
export function printDay(
  house: Pick<House, 'hour' | 'day' | 'date' | 'midnight' | 'now'>,
  plan: DayPlan,
): void {
  last?.();
  const page = document.createElement('div');
  page.className = 'printed-page';
  document.body.append(page);
  const undo = render(() => <PrintedDay view={printView(plan, house)} />, page);
  const gone = (): void => {
    last = null;
    window.removeEventListener('afterprint', gone);
    undo();
    page.remove();
  };
  last = gone;
  window.addEventListener('afterprint', gone);
  window.print();
}
