/** Integrals by brute force, which share no code with the product. */

/**
 * Perimeter of an ellipse by the trapezium rule over one turn. The speed is periodic and smooth, so the rule converges faster than any power
 * of the number of steps.
 */
export const perimeterByQuadrature = (a: number, b: number, steps = 20000): number => {
  let sum = 0;
  for (let i = 0; i < steps; i++) {
    const u = (2 * Math.PI * i) / steps;
    sum += Math.hypot(a * Math.sin(u), b * Math.cos(u));
  }
  return (sum * 2 * Math.PI) / steps;
};

/** Nodes and weights of Gauss and Legendre on −1 to 1, by Newton's iteration on the polynomial. */
export const gaussLegendre = (n: number): readonly (readonly [node: number, weight: number])[] =>
  Array.from({ length: n }, (_, i) => {
    let x = Math.cos((Math.PI * (i + 0.75)) / (n + 0.5));
    let slope = 1;
    for (let pass = 0; pass < 100; pass++) {
      let [before, now] = [1, x];
      for (let k = 2; k <= n; k++) [before, now] = [now, ((2 * k - 1) * x * now - (k - 1) * before) / k];
      slope = (n * (x * now - before)) / (x * x - 1);
      const step = now / slope;
      x -= step;
      if (Math.abs(step) < 1e-16) break;
    }
    return [x, 2 / ((1 - x * x) * slope * slope)] as const;
  });

/**
 * Surface of an ellipsoid as a double integral over the unit sphere: ∫∫ √(b²c²·nx² + a²c²·ny² + a²b²·nz²), Gauss and Legendre in the height,
 * the trapezium rule round.
 */
export const ellipsoidByQuadrature = (a: number, b: number, c: number, heights = 200, turns = 400): number => {
  let sum = 0;
  for (const [z, weight] of gaussLegendre(heights)) {
    const r = Math.sqrt(1 - z * z);
    let round = 0;
    for (let i = 0; i < turns; i++) {
      const u = (2 * Math.PI * i) / turns;
      round += Math.hypot(b * c * r * Math.cos(u), a * c * r * Math.sin(u), a * b * z);
    }
    sum += (weight * round * 2 * Math.PI) / turns;
  }
  return sum;
};
