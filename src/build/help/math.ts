/** Formulas in LaTeX as MathML, which browsers set by themselves. */
import temml from 'temml';

/** Formulas of a definition: one a line. */
export const mathLines = (math: string): string[] => math.split('\n').filter((line) => line.trim() !== '');

/**
 * One formula as MathML. Styles stand in help.css, so that pages hold none of their own.
 *
 * @throws where the LaTeX cannot be read
 */
export const mathml = (latex: string): string =>
  temml
    .renderToString(latex, { displayMode: true, throwOnError: true })
    .replace(/ style="[^"]*"/g, '')
    .replace('<math ', '<math xmlns="http://www.w3.org/1998/Math/MathML" ');
