import { it } from 'vitest';
import { GATES, GATE_WAYS, lookAtGate } from '../browser/harness/gates.ts';
import { everyWay } from '../browser/harness/ways.ts';

it.each(GATES.map((gate) => [gate.name, gate] as const))(
  'shows the whole caution of the gate to %s without a press, in every way there is',
  async (_, gate) => {
    await lookAtGate(gate, everyWay(GATE_WAYS));
  },
);
