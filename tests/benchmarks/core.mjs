// The calculation against the bare arithmetic of the same formula, the worksheet wrapper, a rejected input, a column.
import { median, perCall } from './table.mjs';

export const core = async (compiled) => {
  const { plaster } = await compiled('calculation/mixing/plaster.js');
  const { DEFAULT_SETTINGS: s } = await compiled('calculation/settings.js');
  const { functions } = await compiled('functions/index.js');
  const f = functions.find(({ id }) => id === 'PLASTER');

  const bare = (area, layers) =>
    ((area * (layers * (s.layerThickness - s.clothWeight / s.glassDensity) + s.finishCoat)) /
      (1 / 2760 + s.waterRatio / 998)) *
    (1 + s.waste) *
    s.calibration;
  const areaOf = (i) => 0.5 + (i % 97) / 50;
  const layersOf = (i) => 4 + (i % 12);

  const bareNs = perCall((i) => bare(areaOf(i), layersOf(i)) > 0);
  const coreNs = perCall((i) => plaster(areaOf(i), layersOf(i), s) > 0);
  const wrapperNs = perCall((i) => f.call([areaOf(i), layersOf(i)]) > 0);
  const rejectedNs = perCall((i) => f.call([areaOf(i), 'x']).reason !== '');
  const rows = 50_000;
  const areas = Array.from({ length: rows }, (_, i) => [areaOf(i)]);
  const layers = Array.from({ length: rows }, (_, i) => [layersOf(i)]);
  const column = () => {
    const begin = performance.now();
    if (f.call([areas, layers]).length !== rows) throw new Error('a column of another length');
    return ((performance.now() - begin) * 1e6) / rows;
  };
  for (let i = 0; i < 3; i++) column();
  const columnNs = median(Array.from({ length: 9 }, column));
  const ns = (x) => x.toFixed(1);
  const times = (x, of) => `${(x / of).toFixed(1)} ×`;
  return [
    ['PLASTER, bare arithmetic', ns(bareNs), 'ns', ''],
    ['PLASTER, calculation', ns(coreNs), 'ns', `${times(coreNs, bareNs)} bare, aim 3 ×`],
    ['PLASTER, worksheet call', ns(wrapperNs), 'ns', `${times(wrapperNs, coreNs)} calculation`],
    ['PLASTER, rejected input', ns(rejectedNs), 'ns', `${times(rejectedNs, wrapperNs)} worksheet call`],
    [`PLASTER, a row of a column of ${rows}`, ns(columnNs), 'ns', `${times(columnNs, coreNs)} calculation`],
  ];
};
