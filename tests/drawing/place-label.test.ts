import { describe, expect, it } from 'vitest';
import { type Box, bestPlace, overlap, placesAround } from '../../src/drawing/place-label.ts';

const box = (left: number, top: number, right: number, bottom: number): Box => ({ left, top, right, bottom });
const PAGE = box(0, 0, 200, 200);

describe('places of labels', () => {
  it('are all off the thing', () => {
    const thing = box(90, 90, 110, 110);
    for (const place of placesAround(thing, 40, 16, 2)) {
      expect(overlap(place, thing)).toBe(false);
      expect([place.right - place.left, place.bottom - place.top]).toEqual([40, 16]);
    }
  });

  it('are chosen off other labels, inside of the page, and off lines', () => {
    const thing = box(90, 90, 110, 110);
    const places = placesAround(thing, 40, 16, 2);
    const free = { taken: [thing], inked: [], within: PAGE };
    expect(bestPlace(places, free)).toEqual(places[0]);
    expect(
      overlap(bestPlace(places, { ...free, taken: [thing, box(60, 110, 140, 140)] }), box(60, 110, 140, 140)),
    ).toBe(false);
    expect(bestPlace(places, { ...free, within: box(0, 0, 200, 115) })).toEqual(places[1]);
    expect(bestPlace(places, { ...free, inked: [[100, 120]] })).toEqual(places[1]);
  });

  it('only touch where they share an edge', () => {
    expect(overlap(box(0, 0, 10, 10), box(10, 0, 20, 10))).toBe(false);
    expect(overlap(box(0, 0, 10, 10), box(9, 9, 20, 20))).toBe(true);
  });
});
