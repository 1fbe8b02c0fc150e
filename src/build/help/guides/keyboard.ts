import type { Guide } from '../pieces.ts';

export const keyboard: Guide = {
  file: 'guide-keyboard.html',
  title: 'Workbench and keyboard',
  question: 'How do I work without a desktop spreadsheet, or without a mouse?',
  summary: 'The workbench in the browser, and the keys that it knows.',
  body: `<p class="lead-text">The workbench is a page with cells and a side pane. It calculates on this computer; nothing you open leaves it.</p>
<h2>What can the workbench do?</h2>
<p>It opens, calculates and saves .xlsx workbooks. Save writes only the cells that changed; charts, pictures and everything else in the file stay as they are, also what is not drawn. Rows, columns, sheets and formats are changed in a spreadsheet program.</p>
<p>Start it with <code>npm start</code> in the folder of the program.</p>
<h2>Which keys does it know?</h2>
<dl class="keys">
<dt><kbd>Arrow keys</kbd> <kbd>Tab</kbd> <kbd>Enter</kbd></dt><dd>From cell to cell; with <kbd>Shift</kbd> backwards.</dd>
<dt><kbd>Home</kbd>, <kbd>Ctrl</kbd>+<kbd>Home</kbd>, <kbd>Ctrl</kbd>+<kbd>End</kbd></dt><dd>First column, first cell, last cell.</dd>
<dt><kbd>Page up</kbd> <kbd>Page down</kbd></dt><dd>A screen up or down; with <kbd>Ctrl</kbd> the sheet before or after.</dd>
<dt><kbd>F2</kbd></dt><dd>Change what stands in the cell. <kbd>Escape</kbd> leaves it as it was.</dd>
<dt><kbd>F6</kbd></dt><dd>From the cells to the side pane, to the actions, and back; with <kbd>Shift</kbd> the other way.</dd>
<dt><kbd>Ctrl</kbd>+<kbd>S</kbd>, <kbd>O</kbd>, <kbd>P</kbd></dt><dd>Save, open, print.</dd>
<dt><kbd>Ctrl</kbd>+<kbd>Z</kbd>, <kbd>Y</kbd></dt><dd>Undo, redo.</dd>
</dl>
<h2>And these help pages?</h2>
<p>Everything here can be reached with <kbd>Tab</kbd>. Wide tables and formulas take the focus, and the arrow keys scroll them. Copy buttons stand after each formula. The pages work without a network and without script; only the search and the copy buttons need script.</p>`,
};
