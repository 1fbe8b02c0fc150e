/** The two screens about one jacket. In the add-in they are a file of their own. */
export { planScreen } from './plan-screen.ts';
export { printScreen } from './print-screen.ts';
