/** An invented museum with invented specimens: sizes and weights are made up, and no collection holds them. */

export const MUSEUM = 'Saltmarsh County Museum (invented)';

export interface Specimen {
  readonly number: string;
  readonly element: string;
  /** Longest size, size across, height as it lies [cm]. */
  readonly size: readonly [number, number, number];
  /** [kg] */
  readonly weight: number;
}

const specimen = (number: string, element: string, l: number, w: number, h: number, weight: number): Specimen => ({
  number: `INV ${number}`,
  element,
  size: [l, w, h],
  weight,
});

export const SPECIMENS: readonly Specimen[] = [
  specimen('100', 'tooth, serrated', 7, 3.2, 2, 0.05),
  specimen('107', 'claw', 11, 5, 3, 0.19),
  specimen('114', 'vertebra, tail', 9, 7, 6.5, 0.53),
  specimen('121', 'vertebra, neck', 24, 18, 16, 7.8),
  specimen('128', 'vertebra, back', 31, 26, 22, 22),
  specimen('135', 'vertebra, back, with matrix', 44, 38, 30, 62),
  specimen('142', 'rib, front', 62, 7, 5, 2.6),
  specimen('149', 'rib, middle', 95, 9, 6, 5.7),
  specimen('156', 'rib, rear', 71, 8, 5, 3.6),
  specimen('163', 'humerus, left', 48, 17, 12, 10.9),
  specimen('170', 'humerus, right', 47, 17, 12.5, 12.3),
  specimen('177', 'radius', 36, 9, 7, 2.5),
  specimen('184', 'ulna', 41, 12, 8, 4.4),
  specimen('191', 'femur, left', 88, 24, 17, 44),
  specimen('198', 'femur, right', 90, 24, 17.5, 51),
  specimen('205', 'femur, large', 132, 38, 27, 154),
  specimen('212', 'tibia', 79, 21, 15, 29),
  specimen('219', 'fibula', 74, 8, 6.5, 5),
  specimen('226', 'metatarsal III', 33, 9, 8, 3.3),
  specimen('233', 'foot, articulated', 46, 30, 14, 25),
  specimen('240', 'hand, articulated', 29, 18, 9, 5.8),
  specimen('247', 'ilium', 72, 41, 13, 54),
  specimen('254', 'ischium', 53, 21, 9, 11.2),
  specimen('261', 'pubis', 58, 19, 10, 15.1),
  specimen('268', 'pelvis, whole', 118, 76, 44, 470),
  specimen('275', 'scapula', 84, 28, 9, 24),
  specimen('282', 'coracoid', 27, 22, 8, 5.4),
  specimen('289', 'sternum plate', 39, 31, 6, 8.7),
  specimen('296', 'skull, juvenile', 34, 21, 19, 18.4),
  specimen('303', 'skull, crushed flat', 61, 44, 13, 40),
  specimen('310', 'skull, large', 104, 58, 49, 379),
  specimen('317', 'lower jaw, left', 67, 16, 9, 12.5),
  specimen('324', 'lower jaw, right', 66, 16, 9, 11.6),
  specimen('331', 'snout fragment', 22, 14, 11, 4.3),
  specimen('338', 'shell, turtle', 49, 43, 21, 50),
  specimen('345', 'egg clutch in matrix', 52, 47, 24, 72),
  specimen('352', 'fish slab', 83, 56, 6, 66),
  specimen('359', 'leaf slab', 41, 33, 4, 12.7),
  specimen('366', 'trackway slab', 112, 74, 9, 175),
  specimen('373', 'tusk fragment', 57, 13, 12.5, 10.4),
];
