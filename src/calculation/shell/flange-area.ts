/**
 * Area of the flanges of both halves: a band of width f along the seam, with its corners rounded: 2(P·f + πf²).
 *
 * @param seam length of the seam P [m]
 * @param flange width of a flange f [m]
 * @returns area [m²], one side of each flange
 * Limits: a convex seam. Source: area of a parallel band, Steiner. Example: 1.6264 m by 0.05 m, 0.1783 m².
 */
export const flangeArea = (seam: number, flange: number): number => 2 * (seam * flange + Math.PI * flange * flange);
