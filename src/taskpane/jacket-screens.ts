/** The two screens about one jacket, and the drawing of feet. In the add-in they are a file of their own. */
export { cellDrawing } from './cell-drawing.ts';
export { planScreen } from './plan-screen.ts';
export { printScreen } from './print-screen.ts';
