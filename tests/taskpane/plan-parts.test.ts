import { expect, it } from 'vitest';
import { PLAN_ROWS } from '../../src/calculation/plans/plan-rows.ts';
import { PARTS } from '../../src/taskpane/plan-parts.ts';

it('every row of the plan stands under one heading', () => {
  expect(PARTS.flatMap(({ rows }) => rows).sort()).toEqual(PLAN_ROWS.map(({ label }) => label).sort());
});
