import { createGrid } from './grid.ts';

const grid = createGrid(document.getElementById('bench-grid')!, matchMedia('(prefers-color-scheme: dark)').matches);
const cellData: Record<number, Record<number, object>> = {
  0: { 0: { v: 'number', s: 'h' }, 1: { v: 'area', s: 'h' }, 2: { v: 'plaster', s: 'h' } },
};
[1.5, 2.5, 3.25, 4].forEach((a, i) => {
  cellData[i + 1] = { 0: { v: `INV ${i}` }, 1: { v: a, s: 'm2' } };
});
cellData[1]![2] = { f: '=JACKET.PLASTER(B2:B5,4)', s: 'kg' };
cellData[8] = { 0: { v: 'bad' }, 2: { f: '=JACKET.PLASTER("x",4)' } };
grid.show({
  id: 'wb',
  name: 'x',
  styles: {
    h: { bl: 1, bg: { rgb: '#FAF8F4' }, cl: { rgb: '#23272B' } },
    kg: { n: { pattern: '0.00" kg"' } },
    m2: { n: { pattern: '0.00" m²"' } },
  },
  sheetOrder: ['s1', 's2'],
  sheets: {
    s1: { id: 's1', name: 'Rows', rowCount: 200, columnCount: 26, cellData },
    s2: { id: 's2', name: 'Notes', rowCount: 100, columnCount: 26 },
  },
} as never);
Object.assign(window, { api: grid.api });
grid.api.getFormula().executeCalculation();
void grid.api
  .getFormula()
  .onCalculationEnd()
  .then(() => Object.assign(window, { ready: performance.now() }));
