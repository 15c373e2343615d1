import { it } from 'vitest';
import { GATES, GATE_WAYS, lookAtGate } from './harness/gates.ts';
import { everyWay } from './harness/ways.ts';

// Where there is least room, and by itself; every way of every gate is in tests/faults/gates.test.ts.
const TIGHT = everyWay(GATE_WAYS).filter(
  ({ bakes, view, text }) => bakes === 'two' && (view === 'small') === (text === 'bigger'),
);

it.each(GATES.map((gate) => [gate.name, gate] as const))(
  'shows the whole caution of the gate to %s without a press',
  async (_, gate) => {
    await lookAtGate(gate, TIGHT);
  },
);
