/** Constants that several topics share. One a line: value, unit, source. */

/** Standard acceleration of gravity [m/s²]. Exact: CGPM 1901; NIST SP 811, appendix B. */
export const GRAVITY = 9.80665;

/** Dihydrate formed per kg of hemihydrate [kg/kg]: 172.164/145.1415. Derived from the standard atomic weights (CIAAW). */
export const DIHYDRATE_PER_HEMIHYDRATE = 1.18618;

/** Water that setting binds, per kg of hemihydrate [kg/kg]: 1.5 × 18.015/145.1415. Derived from the standard atomic weights (CIAAW). */
export const COMBINED_WATER = 0.18618;

/** Density of water near 20 °C [kg/m³]. Handbook value, rounded. */
export const WATER_DENSITY = 998;

/** Density of alpha hemihydrate, the plaster of low water ratios [kg/m³]. Museum materials database: bassanite 2.69 to 2.76. */
export const ALPHA_DENSITY = 2760;

/** Density of beta hemihydrate, the plaster of high water ratios [kg/m³]. Mineral data: 2.64; remembered handbook range 2.619 to 2.637. */
export const BETA_DENSITY = 2630;

/** Water ratio from which a plaster is taken as beta hemihydrate [kg/kg]. Assumption between the published consistencies. */
export const BETA_FROM = 0.5;

/** Density of dihydrate, set plaster without pores [kg/m³]. Mineral data. */
export const DIHYDRATE_DENSITY = 2320;

/** Absolute zero [°C]. Exact: definition of the degree Celsius. */
export const ABSOLUTE_ZERO = -273.15;

/** International inch [m]. Exact: agreement of 1959. */
export const INCH = 0.0254;
