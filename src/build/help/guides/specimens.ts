/** Specimens of the invented museum that the guides work with. */
import { MUSEUM, SPECIMENS } from '../../samples/museum.ts';

const specimen = (number: string) => {
  const found = SPECIMENS.find((one) => one.number === number);
  if (!found) throw new Error(`there is no specimen ${number} in the invented museum`);
  return found;
};

/** A neck vertebra: small enough for one person. */
export const VERTEBRA = specimen('INV 121');

/** A season's list as cells, with its names above. */
export const SEASON = [
  ['number', 'length', 'width', 'height', 'weight'],
  ...['INV 121', 'INV 163', 'INV 205'].map((number) => {
    const { size, weight } = specimen(number);
    return [number, ...size, weight];
  }),
];

export { MUSEUM };
