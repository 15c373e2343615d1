import { baseDoughRows } from './base-dough-rows.ts';
import { breadRows } from './bread-rows.ts';
import { circleOvenRows } from './circle-oven-rows.ts';
import { clockRows, yeastRows } from './clock-rows.ts';
import { costRows } from './cost-rows.ts';
import { driftRows } from './drift-rows.ts';
import { exactRows } from './exact-rows.ts';
import { formulaRows } from './formula-rows.ts';
import { heatRows } from './heat-rows.ts';
import { labelRows } from './label-rows.ts';
import { ovenRows } from './oven-rows.ts';
import { readinessRows } from './readiness-rows.ts';
import type { Row } from './row.ts';

/** Every value of the trade that the core is held against. */
export const allRows = (): Row[] => [
  ...formulaRows(),
  ...baseDoughRows(),
  ...exactRows(),
  ...clockRows(),
  ...breadRows(),
  ...yeastRows(),
  ...heatRows(),
  ...driftRows(),
  ...ovenRows(),
  ...circleOvenRows(),
  ...readinessRows(),
  ...costRows(),
  ...labelRows(),
];
