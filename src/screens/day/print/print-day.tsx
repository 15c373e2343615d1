import type { DayPlan } from '../../../core/day/laid/day-plan.ts';
import { printPage } from '../../../parts/print-page.ts';
import type { House } from '../../house.ts';
import { PrintedDay } from './PrintedDay.tsx';
import { printView } from './print-view.ts';

/** Prints a plan on one page of paper. */
export const printDay = (
  house: Pick<House, 'hour' | 'day' | 'date' | 'midnight' | 'now'>,
  plan: DayPlan,
): void => printPage(() => <PrintedDay view={printView(plan, house)} />);
