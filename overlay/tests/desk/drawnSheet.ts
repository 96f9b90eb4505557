import type { PointFacts, RunSheet, StepLine } from '../../src/wirePlan.ts';

/** A step of a way, numbered from 1 on. */
export const step = (number: number, said: Partial<StepLine> = {}): StepLine => ({
  number,
  at: number * 40,
  seconds: 40,
  rule: 'hidden-single',
  name: 'hidden single',
  places: [{ cell: `r1c${number}`, digit: 5 }],
  removes: [],
  isGate: false,
  isFeatured: false,
  short: `step ${number}`,
  text: `Say step ${number}.`,
  ...said,
});

/** A way of four steps in three passages; the last one is the turn of a featured rule. */
export const sheet: RunSheet = {
  grid: '.'.repeat(81),
  isComplete: true,
  seconds: 125.5,
  passages: [
    { title: 'Singles in row 1', first: 1, last: 2, at: 0, seconds: 80 },
    { title: 'Singles in row 2', first: 3, last: 3, at: 80, seconds: 40 },
    { title: 'Featured: XY-wing', first: 4, last: 4, at: 120, seconds: 5.5 },
  ],
  steps: [
    step(1),
    step(2, { isGate: true }),
    step(3),
    step(4, { isFeatured: true, places: [], removes: [{ cell: 'r4c5', digit: 4 }] }),
  ],
  featured: [
    {
      rule: 'xy-wing',
      name: 'XY-wing',
      step: 4,
      others: [
        {
          cells: ['r1c1', 'r2c2'],
          places: [],
          removes: [{ cell: 'r4c5', digit: 4 }],
          fromStep: 2,
          toStep: 3,
        },
      ],
    },
  ],
  talkingPoints: [
    {
      step: 4,
      oneIn: 5,
      text: 'One puzzle in 5 needs XY-wing.',
      facts: facts({ kind: 'needs', rule: 'xy-wing' }),
    },
    {
      step: null,
      oneIn: null,
      text: 'Block 6 is busy.',
      facts: facts({ kind: 'busiest-block', houses: ['block 6'] }),
    },
  ],
};

function facts(said: Partial<PointFacts>): PointFacts {
  return { kind: '', cells: [], digits: [], houses: [], rule: null, count: null, outOf: null, ...said };
}
