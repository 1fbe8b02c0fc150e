/** A jacket cut across, with numbers at its parts and their names beside: our own drawing. */
import { escaped } from '../html.ts';

/** Parts from top to bottom: a word, what it is, the point its line leads to and where its number stands. */
const PARTS = [
  { word: 'shell', is: 'layers of cloth and plaster, in two halves', x: 276, y: 52, to: [372, 22] },
  { word: 'padding', is: 'felt or foam, on the flanges too', x: 288, y: 87, to: [372, 58] },
  { word: 'specimen', is: 'what the jacket is for', x: 250, y: 104, to: [372, 94] },
  { word: 'seam', is: 'the line between the halves', x: 334, y: 118, to: [372, 130] },
  { word: 'flange', is: 'where the halves meet, with bolts through it', x: 330, y: 127, to: [372, 166] },
  { word: 'foot', is: 'three to each half', x: 270, y: 208, to: [372, 208] },
] as const;

const numbered = ({ x, y, to: [left, top] }: (typeof PARTS)[number], i: number): string =>
  `<path class="leader" d="M${x} ${y}L${left - 22} ${top}H${left - 4}"/><circle cx="${x}" cy="${y}" r="3"/><text x="${left}" y="${top + 6}">${i + 1}</text>`;

export const partsDrawing = (): string => `<figure class="parts">
<svg viewBox="24 10 366 218" role="img" aria-labelledby="parts-title">
<title id="parts-title">A jacket cut across: the specimen in its padding, the shell in two halves that meet at the flange, feet below</title>
<path class="shell" d="M30 112V107H66C66 58 120 28 190 28S314 58 314 107H350V112Z"/>
<path class="shell" d="M30 124V129H66C66 178 120 208 190 208S314 178 314 129H350V124Z"/>
<path class="shell" d="M96 190L92 222H128L130 203ZM284 190L288 222H252L250 203Z"/>
<path class="padding" d="M74 112C74 64 124 36 190 36S306 64 306 112ZM74 124C74 172 124 200 190 200S306 172 306 124Z"/>
<path class="specimen" d="M92 118C92 84 140 50 190 50S288 84 288 118S240 186 190 186S92 152 92 118Z"/>
<path d="M40 223H340"/>
${PARTS.map(numbered).join('\n')}
</svg>
<ol>${PARTS.map(({ word, is }) => `<li><strong>${escaped(word)}</strong>, ${escaped(is)}</li>`).join('')}</ol>
<figcaption>Both halves have feet, so that the jacket can lie either way up; the upper ones are left out here.</figcaption>
</figure>`;
