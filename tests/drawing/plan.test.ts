import { describe, expect, it } from 'vitest';
import { planDrawing } from '../../src/drawing/plan.ts';
import { standalone } from '../../src/drawing/svg.ts';
import { planInput, SPECIMENS } from './inputs.ts';
import { attribute, expectDrawing, numbersOf, type Read, readSvg } from './read-svg.ts';

type Point = readonly [number, number];

const NAMES = Object.keys(SPECIMENS);
const WIDTHS = [320, 700];
const cases = NAMES.flatMap((name) => WIDTHS.map((width) => [name, width] as const));

/** Points of a closed path, or corners of a rectangle. */
const pointsOf = (element: Read): Point[] => {
  if (element.name === 'path') {
    const all = numbersOf(element.attributes.d!);
    return all.flatMap((x, i) => (i % 2 ? [] : [[x, all[i + 1]!] as const]));
  }
  const [x, y, w, h] = ['x', 'y', 'width', 'height'].map((name) => attribute(element, name)) as [
    number,
    number,
    number,
    number,
  ];
  return [
    [x, y],
    [x + w, y],
    [x + w, y + h],
    [x, y + h],
  ];
};

/** Even-odd rule. */
const inside = ([x, y]: Point, polygon: readonly Point[]): boolean =>
  polygon.reduce((odd, [x1, y1], i) => {
    const [x2, y2] = polygon[(i + 1) % polygon.length]!;
    return y1 > y !== y2 > y && x < x1 + ((y - y1) / (y2 - y1)) * (x2 - x1) ? !odd : odd;
  }, false);

const toSegment = ([x, y]: Point, [ax, ay]: Point, [bx, by]: Point): number => {
  const share = ((x - ax) * (bx - ax) + (y - ay) * (by - ay)) / ((bx - ax) ** 2 + (by - ay) ** 2);
  const t = Math.min(1, Math.max(0, share));
  return Math.hypot(x - ax - t * (bx - ax), y - ay - t * (by - ay));
};

const partsOf = (svg: string) => {
  const all = readSvg(svg);
  const curve = (dash: string | undefined, stroke: string) =>
    all.find(
      ({ name, attributes }) =>
        (name === 'path' || name === 'rect') &&
        attributes['stroke-dasharray'] === dash &&
        attributes['stroke-width'] === stroke,
    )!;
  const circles = all.filter(({ name }) => name === 'circle');
  // Feet are the three squares in the group after the support triangle.
  const feet = all.filter(
    ({ name, attributes }) =>
      name === 'rect' && attributes.width === attributes.height && !attributes.rx && !attributes.stroke,
  );
  return { all, flange: curve('7 4', '1.25'), shell: curve(undefined, '1.75'), circles, feet };
};

describe.each(cases)('plan of the %s at %d px', (name, width) => {
  const input = planInput(name, width);
  const { svg, table } = planDrawing(input);
  const { flange, shell, circles, feet } = partsOf(svg);
  const ring = pointsOf(flange);
  const scale =
    (Math.max(...ring.map(([x]) => x)) - Math.min(...ring.map(([x]) => x))) /
    (input.size![0] + 2 * (input.settings.paddingThickness + input.thickness + input.settings.flange));
  const centres = feet.map((foot): Point => {
    const half = attribute(foot, 'width') / 2;
    return [attribute(foot, 'x') + half, attribute(foot, 'y') + half];
  });

  it('is as it was', async () => {
    await expect(svg).toMatchFileSnapshot(`__snapshots__/plan-${name}-${width}.svg`);
  });

  it('keeps the rules of all drawings', () => {
    expectDrawing(svg, input.id);
    expect(attribute(readSvg(svg)[0]!, 'width')).toBe(width);
  });

  it('has three feet of the right size inside of the shell, at their places', () => {
    expect(feet).toHaveLength(3);
    const body = pointsOf(shell);
    for (const [i, foot] of feet.entries()) {
      // Two decimals are drawn.
      expect(Math.abs(attribute(foot, 'width') - scale * input.footSize)).toBeLessThan(0.02);
      expect(inside(centres[i]!, body)).toBe(true);
      for (const corner of pointsOf(foot)) expect(inside(corner, ring)).toBe(true);
    }
    for (const i of [1, 2]) {
      const [dx, dy] = [centres[i]![0] - centres[0]![0], centres[i]![1] - centres[0]![1]];
      expect(Math.abs(dx - scale * (input.feet[i]![0] - input.feet[0][0]))).toBeLessThan(0.05);
      expect(Math.abs(-dy - scale * (input.feet[i]![1] - input.feet[0][1]))).toBeLessThan(0.05);
    }
  });

  it('draws the margin so that it touches the support triangle, and the reach to the same scale', () => {
    const rings = circles.filter(({ attributes }) => attributes.stroke);
    const [margin, tip] = rings as [Read, Read];
    const middle: Point = [attribute(margin, 'cx'), attribute(margin, 'cy')];
    const nearest = Math.min(...[0, 1, 2].map((i) => toSegment(middle, centres[i]!, centres[(i + 1) % 3]!)));
    expect(Math.abs(attribute(margin, 'r') - nearest)).toBeLessThan(0.05);
    expect(Math.abs(attribute(tip, 'r') - scale * input.tipReach)).toBeLessThan(0.02);
    expect(tip.attributes['stroke-dasharray']).toBeDefined();
  });

  it('says the same in its table', () => {
    const said = table.flat().join('\n');
    const { labels } = input;
    for (const label of [
      labels.length,
      labels.width,
      labels.balance,
      labels.margin,
      labels.tipReach,
      ...labels.feet.flatMap(({ place, load }) => [place, load]),
    ])
      expect(said).toContain(label);
    expect(table.map(([part]) => part)).toContain('foot 3');
    for (const { load } of labels.feet) expect(svg).toContain(load);
  });
});

describe('planDrawing', () => {
  it('says that a balance point is outside of the feet, and draws no margin', () => {
    const input = planInput('skull', 320);
    const { svg, table } = planDrawing({ ...input, margin: -0.02 });
    expectDrawing(svg, input.id);
    expect(svg).toContain('outside of the support triangle');
    expect(table.flat().join()).toContain('outside of the feet');
    expect(partsOf(svg).circles.filter(({ attributes }) => attributes.stroke)).toHaveLength(1);
  });

  it('takes any name', () => {
    const input = planInput('skull', 320);
    const { svg } = planDrawing({ ...input, labels: { ...input.labels, specimen: '<script>"&\u0007' } });
    expectDrawing(svg, input.id);
    expect(svg).not.toContain('<script');
  });

  it('keeps a jacket that is wider than long inside', () => {
    const input = planInput('skull', 320);
    const { settings } = planInput('slab', 320);
    const { svg } = planDrawing({ ...input, settings: { ...settings, shape: 'cylinder' }, size: [0.3, 0.8] });
    expect(attribute(readSvg(svg)[0]!, 'height')).toBeLessThan(600);
  });

  it('can stand alone in black on white', () => {
    const alone = standalone(planDrawing(planInput('femur', 700)).svg);
    expect(alone).not.toMatch(/var\(|currentColor/);
    expect(readSvg(alone).length).toBeGreaterThan(20);
  });

  it('draws the feet alone where the jacket is not known, wherever their origin is', () => {
    const { size: _, ...input } = planInput('skull', 320);
    const away = (by: number) =>
      planDrawing({
        ...input,
        feet: input.feet.map(([x, y]) => [x + by, y - by]) as unknown as typeof input.feet,
        balance: [input.balance[0] + by, input.balance[1] - by],
      });
    const { svg, table } = away(0);
    expectDrawing(svg, input.id);
    const { all, feet } = partsOf(svg);
    expect(feet).toHaveLength(3);
    expect(all.filter(({ attributes }) => attributes['stroke-dasharray'] === '7 4')).toEqual([]);
    expect(svg).toContain('over the feet');
    expect(table.flat().join()).not.toContain('flange');
    expect(away(5).svg).toBe(svg);
  });
});
