import type { Guide } from '../pieces.ts';

export const errors: Guide = {
  file: 'guide-errors.html',
  title: 'Errors',
  question: 'The cell shows an error: what now?',
  summary: 'Four error values, how to see the reason, and what “doubtful” means.',
  body: `<p class="lead-text">Every error has a reason, and every reason says what to type instead.</p>
<h2>1. How do I see the reason?</h2>
<p>Point at the cell, or open its error menu. Where your spreadsheet shows none, put the same call into {{f CHECK}}: the name of the function in quotes, then its arguments.</p>
{{=JACKET.CHECK("PLASTER","wide",8) → shell_area is text; type a number}}
<h2>2. What do the error values mean?</h2>
<dl>
<dt><code>#VALUE!</code></dt><dd>An argument is missing or cannot be used. The reason names it.</dd>
<dt><code>#N/A</code></dt><dd>What you typed is right, but there is no answer, for instance a balance point outside of the feet. The reason says what to do.</dd>
<dt><code>#NUM!</code></dt><dd>The result is too large to be a number. Look for a slip of several zeros.</dd>
<dt><code>#NAME?</code></dt><dd>Your spreadsheet does not know the name: the add-in is not loaded, or the name is misspelt.</dd>
</dl>
<p>Any other error came in from a cell that the formula reads. Mend that cell first.</p>
<h2>3. Why is the cell blank?</h2>
<p>All cells that the formula reads in that row are blank. It fills itself once you type.</p>
<h2>4. Why does only one row show an error?</h2>
<p>A cell that cannot be used spoils its own row alone. The others are right.</p>
<h2>5. What does doubtful mean?</h2>
<p>The number is calculated, but outside of the limits within which it can be relied on.</p>
{{=JACKET.CHECK("LAYERS",900) → doubtful: this holds for a specimen up to the most layers weight; above it a jacket wants a pallet or a frame, not more layers}}
<h2>6. Why does my spreadsheet not accept the formula at all?</h2>
<p>Where numbers are written with a decimal comma, arguments are separated by semicolons. Every example here shows both. More under <a href="guide-units.html">units and separators</a>.</p>`,
};
