/** Poisson's ratio of the shell [1]. That of the plate's table; gypsum's is lower, which is on the safe side. */
export const POISSON = 0.3;
