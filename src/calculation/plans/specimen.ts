/** What is known of a specimen before its jacket is planned. SI. */
export interface Specimen {
  /** Size along the long axis [m]. */
  readonly length: number;
  /** Size across it, seen from above [m]. */
  readonly width: number;
  /** Height as it lies in the jacket [m]. */
  readonly height: number;
  /** The specimen alone [kg]. */
  readonly weight: number;
  /** Surface, where it is measured or moved to an end of its range instead of worked out from the sizes [m²]. */
  readonly surface?: number;
}
