import { dentOdds, riseEvidence } from '../../src/core/readiness/evidence.ts';
import { beliefOf, openPosterior, weighIn } from '../../src/core/readiness/posterior.ts';
import { rowsOf, type Row } from './row.ts';

/** The readiness filter's own equations worked out apart: they test the port, not the truth. */
export function readinessRows(): Row[] {
  const port = rowsOf('readiness', 'port', 'the filter’s equations, worked out apart');
  const { springs, slow, stays } = dentOdds(1);
  const seen = riseEvidence(62, { theta: 2.6, p: 0.08257, celsius: 26 });
  const { mean, sd } = beliefOf(weighIn(openPosterior({ mean: 0, sd: 0.25 }), seen));
  return [
    port('dent at q 1: springs', springs, 0.139),
    port('dent at q 1: slowly', slow, 0.8102),
    port('dent at q 1: stays', stays, 0.0508),
    port('ln v after a rise of 62 %: mean', mean, 0.18),
    port('ln v after a rise of 62 %: sd', sd, 0.063),
  ];
}
