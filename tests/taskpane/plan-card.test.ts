/** The plan of the form and what goes on paper, against the functions' own answers. */
import { describe, expect, it } from 'vitest';
import type { OutCell } from '../../src/functions/calling/cell.ts';
import { functions } from '../../src/functions/index.ts';
import { cardModel, labelModels } from '../../src/taskpane/card-model.ts';
import { planCell } from '../../src/taskpane/jacket-plan.ts';
import { compareDrawing, feetDrawing, layoutDrawing } from '../../src/taskpane/plan-drawings.ts';
import { METRIC_FORM, planned, US_FORM } from './kit.ts';

const table = (id: string, ...args: readonly unknown[]): OutCell[][] =>
  functions.find((f) => f.id === id)!.call(args as never) as OutCell[][];

const valueIn = (rows: OutCell[][], label: string): number => rows.find(([item]) => item === label)![1] as number;

describe('metric, the padding chosen', () => {
  const jacket = planned(METRIC_FORM);
  const model = cardModel(jacket);
  const plan = table('PLAN', 60, 40, 30, 20, 'felt');

  it('asks the functions and nothing else', () => {
    expect(jacket.plan.answer).toEqual(plan);
    const [area, layers] = [valueIn(plan, 'shell area'), valueIn(plan, 'mean layers')];
    expect(jacket.mixes.answer).toEqual(table('MIX_TABLE', area, layers));
    expect(jacket.times.answer).toEqual(table('SCHEDULE', area, layers));
    // Six layers and the one over everything.
    expect(jacket.cuts.answer).toEqual(table('CUT_LIST', 60, 40, 30, 7));
    expect(jacket.feet.answer).toEqual(table('FEET', 60, 40, valueIn(plan, 'weight')));
  });

  it('reads as people read', () => {
    // The example of PLAN: 40.09227299 kg with the specimen.
    expect(model.weights).toEqual([
      ['weight with specimen', 'about 40.1 kg (35.5 to 46.9 kg)'],
      ['on the day it is made', 'about 43 kg (37.9 to 50.7 kg)'],
      ['people', 'a hoist'],
    ]);
    expect(model.mixes.lines).toEqual([
      { half: 'lower', count: 1, waterMass: '3.15 kg', water: '3.15 L', plaster: '8.28 kg', slurry: '6.15 L' },
      { half: 'upper', count: 1, waterMass: '3.15 kg', water: '3.15 L', plaster: '8.28 kg', slurry: '6.15 L' },
    ]);
    expect(model.cuts.lines[0]).toEqual({ purpose: 'cover', pieces: '42', size: '42 × 42 cm' });
    expect(model.roll).toBe('7.49 m');
    expect(model.layers).toBe('6 layers, and 1 over everything');
    expect(model.times.lines).toHaveLength(9);
  });

  it('has formulas for what it shows', () => {
    const whole = 'JACKET.PLAN(60,40,30,20,JACKET.PADDING_CHOICE(20,FALSE,"low"))';
    expect(model.formula).toBe(`=${whole}`);
    expect(model.mixes.formula).toBe(`=JACKET.MIX_TABLE(INDEX(${whole},6,2),INDEX(${whole},8,2))`);
    expect(model.cuts.formula).toBe(`=JACKET.CUT_LIST(60,40,30,INDEX(${whole},7,2)+1)`);
  });

  it('has nine labels, each with all that must be known before lifting', () => {
    const labels = labelModels(jacket);
    expect(labels).toHaveLength(9);
    for (const { names, weight, people } of labels) {
      expect(names).toEqual([
        ['number', 'INV 1204'],
        ['element', 'skull'],
        ['side', ''],
      ]);
      expect([weight, people]).toEqual(['about 40.1 kg (35.5 to 46.9 kg)', 'a hoist']);
    }
  });
});

describe('us, foam', () => {
  const jacket = planned(US_FORM);
  const plan = table('PLAN', 24, 16, 12, 44, 'foam', 'us');
  const settings = [
    ['units', 'us'],
    ['padding', 'foam'],
  ];

  it('asks in its units and with its padding', () => {
    expect(jacket.plan.answer).toEqual(plan);
    const [area, layers] = [valueIn(plan, 'shell area'), valueIn(plan, 'mean layers')];
    expect(jacket.mixes.answer).toEqual(table('MIX_TABLE', area, layers, settings));
    expect(jacket.times.answer).toEqual(table('SCHEDULE', area, layers, settings));
    expect(jacket.feet.answer).toEqual(table('FEET', 24, 16, valueIn(plan, 'weight'), null, settings));
    expect(jacket.feet.text).toContain(',,{"units","us";"padding","foam"})');
  });

  it('says so everywhere', () => {
    const told = JSON.stringify(cardModel(jacket));
    expect(told).toMatch(/about \d+(\.\d+)? lb/);
    expect(told).toContain(' US qt');
    expect(told).toContain(' yd');
    expect(told).not.toMatch(/\d (kg|cm|L|m)\b/);
  });
});

describe.each([
  ['metric', METRIC_FORM],
  ['us', US_FORM],
])('drawings at 288 px, %s', (_, form) => {
  const jacket = planned(form);
  it('say what the functions say', () => {
    const roll = (table('CUT_LIST', 60, 40, 30, 7).at(-1)![1] as number).toPrecision(3);
    const layout = layoutDrawing(jacket, 'roll', 288)!;
    if (form === METRIC_FORM) expect(layout.svg).toContain(`${roll} m`);
    else expect(layout.svg).toContain(' yd');
    const feet = feetDrawing(jacket, 'feet', 288)!;
    const load = planCell(jacket.plan, 'largest foot load').answer as number;
    expect(JSON.stringify(feet.table)).toContain(`carries ${Number(load.toPrecision(3))} `);
    expect(feet.svg).toContain('width="288"');
    expect(compareDrawing(jacket, 'bars', 288)!.table.map(([item]) => item)).toContain('plaster');
  });
});

it('a jacket that is out of line says so on its card', () => {
  const jacket = planned({ ...METRIC_FORM, length: '6000', weight: '900' });
  expect(cardModel(jacket).advice).toContain('Not strong enough');
});
