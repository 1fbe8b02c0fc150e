import type { Guide } from '../pieces.ts';

export const shop: Guide = {
  file: 'guide-shop.html',
  title: 'Your own shop',
  question: 'How do I use the habits of my own shop?',
  summary: 'Settings: two columns of names and values, given to any function.',
  pieces: {
    shop: {
      kind: 'sheet',
      caption: 'A range named Shop (invented values)',
      cells: [
        ['waste', 0.15],
        ['layer thickness', 1.8, 'mm'],
        ['bucket', 5, 'L'],
        ['piece size', 35, 'cm'],
      ],
    },
    used: {
      kind: 'sheet',
      caption: 'The same shell by the defaults and by Shop',
      cells: [
        ['shell area', 1, 'm²'],
        ['layers', 8, ''],
        ['plaster, defaults', { formula: '=JACKET.PLASTER(B1,B2)', shows: '18.3' }, 'kg'],
        ['plaster, Shop', { formula: '=JACKET.PLASTER(B1,B2,Shop)', shows: '22.8' }, 'kg'],
        ['mixes, defaults', { formula: '=JACKET.MIXES(B1,B2)', shows: '2' }, ''],
        ['mixes, Shop', { formula: '=JACKET.MIXES(B1,B2,Shop)', shows: '4' }, ''],
      ],
    },
  },
  names: { Shop: 'shop!A1:C4' },
  body: `<p class="lead-text">Every default can be yours: thickness of a layer, waste, bucket, flange, prices. You write down only what differs.</p>
<h2>1. Where do I write them?</h2>
<p>In two columns, name and value. A third column may hold the unit; it is checked, so that millimetres are not taken for inches. Name the range, for instance <code>Shop</code>.</p>
{{piece shop}}
<h2>2. How do functions get to know them?</h2>
<p>Give the range as the last argument. Nothing is hidden: a formula without it uses the defaults.</p>
{{piece used}}
<h2>3. Is there a list of all names?</h2>
<p>The <a href="list-settings.html">settings page</a> has them with values, ranges and sources. {{f SETTINGS}} puts the same list into your sheet: paste it as values, change what differs, and name the first columns. Values that follow another one are left blank there, so that they keep following.</p>
<h2>4. What if I misspell a name?</h2>
<p>The cell shows #VALUE! and the reason names the nearest known setting. A value out of its range is refused in the same way, with the range in the reason.</p>
<h2>5. What do my own values change in a plan?</h2>
<p>The low and high ends of {{f PLAN}} come closer: a value that you measured yourself is taken to be off by 5 % at most, a default by much more.</p>
<h2>6. Which ones are worth measuring first?</h2>
<ul>
<li>{{setting layer thickness}}: measure an offcut and divide by its layers.</li>
<li>{{setting waste}}: what stays in buckets and on the floor.</li>
<li>{{setting flange}} and {{setting lap}}: how you cut, with a tape.</li>
<li>{{setting calibration}}: plaster really used over plaster estimated; see <a href="guide-calibrate.html">calibrating</a>.</li>
</ul>`,
};
