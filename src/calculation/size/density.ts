/**
 * Densities of bone, rock, sediment and minerals. One a line: value, unit, source.
 *
 * The range of a rock is that of many samples. The means of rocks and sediments were read; the ranges of dolomite, clay, sand, gravel and
 * soil are from memory of the same table.
 */
import { type Result, wrong } from '../result.ts';
import type { Basis } from '../settings.ts';

/** Fresh cortical bone [kg/m³]. Tissue table that cites NBS-29: 1.7 to 2.0 kg/L. */
export const FRESH_BONE_DENSITY = 1850;

/** Fossil bone at its heavy end [kg/m³]. Derived: 45 % bone mineral by volume, the rest calcite, 2.91 kg/L. */
export const FOSSIL_BONE_DENSITY = 2900;

/** Sandstone [kg/m³]. Telford, Geldart and Sheriff 1990, table 2.1. */
export const SANDSTONE_DENSITY = 2350;

/** Shale [kg/m³]. Telford, Geldart and Sheriff 1990, table 2.1. */
export const SHALE_DENSITY = 2400;

/** Limestone [kg/m³]. Telford, Geldart and Sheriff 1990, table 2.1. */
export const LIMESTONE_DENSITY = 2550;

/** Dolomite, the rock [kg/m³]. Telford, Geldart and Sheriff 1990, table 2.1. */
export const DOLOMITE_DENSITY = 2700;

/** Clay [kg/m³]. Telford, Geldart and Sheriff 1990, table 2.1. */
export const CLAY_DENSITY = 2210;

/** Sand [kg/m³]. Telford, Geldart and Sheriff 1990, table 2.1. */
export const SAND_DENSITY = 2000;

/** Gravel [kg/m³]. Telford, Geldart and Sheriff 1990, table 2.1. */
export const GRAVEL_DENSITY = 2000;

/** Soil [kg/m³]. Telford, Geldart and Sheriff 1990, table 2.1. */
export const SOIL_DENSITY = 1920;

/** Quartz [kg/m³]. Mineral data. */
export const QUARTZ_DENSITY = 2650;

/** Calcite [kg/m³]. Mineral data. */
export const CALCITE_DENSITY = 2710;

/** Gypsum, the mineral [kg/m³]. Mineral data: 2.2 to 2.4 kg/L. */
export const GYPSUM_DENSITY = 2320;

/** A material: its density and the range it was found in [kg/m³], and how that is known. */
export interface Material {
  readonly density: number;
  readonly low: number;
  readonly high: number;
  readonly basis: Basis;
  readonly source: string;
}

const material = (density: number, low: number, high: number, basis: Basis, source: string): Material => ({
  density,
  low,
  high,
  basis,
  source,
});

const TABLE = 'Telford, Geldart and Sheriff, Applied Geophysics, 1990, table 2.1, wet sediments';
const TABLE_RANGE_REMEMBERED = `mean: ${TABLE}; range from memory of the same table`;
const MINERAL = 'mineral data; a pure mineral has one value';

/** All materials by their names in lower case. */
export const MATERIALS: Readonly<Record<string, Material>> = {
  'fresh bone': material(FRESH_BONE_DENSITY, 1700, 2000, 'published', 'cortical bone, tissue table that cites NBS-29'),
  'fossil bone': material(
    FOSSIL_BONE_DENSITY,
    2100,
    2910,
    'derived',
    'heavy end: 45 % bone mineral by volume with its pores filled by calcite; low end: a third of it voids; no published table was found',
  ),
  sandstone: material(SANDSTONE_DENSITY, 1610, 2760, 'published', TABLE),
  shale: material(SHALE_DENSITY, 1770, 3200, 'published', TABLE),
  mudstone: material(SHALE_DENSITY, 1770, 3200, 'published', `as shale: ${TABLE}`),
  limestone: material(LIMESTONE_DENSITY, 1930, 2900, 'published', TABLE),
  dolomite: material(DOLOMITE_DENSITY, 2280, 2900, 'published', TABLE_RANGE_REMEMBERED),
  clay: material(CLAY_DENSITY, 1630, 2600, 'published', TABLE_RANGE_REMEMBERED),
  sand: material(SAND_DENSITY, 1700, 2300, 'published', TABLE_RANGE_REMEMBERED),
  gravel: material(GRAVEL_DENSITY, 1700, 2400, 'published', TABLE_RANGE_REMEMBERED),
  soil: material(SOIL_DENSITY, 1200, 2400, 'published', TABLE_RANGE_REMEMBERED),
  quartz: material(QUARTZ_DENSITY, 2650, 2650, 'published', MINERAL),
  calcite: material(CALCITE_DENSITY, 2710, 2710, 'published', MINERAL),
  gypsum: material(GYPSUM_DENSITY, 2200, 2400, 'published', 'mineral data'),
};

/**
 * Density of a material by its name.
 *
 * @param name of the material, in any letter case
 * @returns density [kg/m³]; `bone` alone is refused, since fresh and fossil bone differ by half
 * Limits: a typical value of a wide range; weigh the specimen where you can.
 * Source: beside each material. Example: sandstone, 2350 kg/m³.
 */
export const density = (name: string): Result<number> => {
  const plain = name.trim().replace(/\s+/g, ' ').toLowerCase();
  if (plain === 'bone') return wrong('material', 'is "bone"; type fossil bone or fresh bone');
  if (!Object.hasOwn(MATERIALS, plain))
    return wrong('material', 'must be a known material, such as sandstone or fossil bone');
  return MATERIALS[plain]!.density;
};
