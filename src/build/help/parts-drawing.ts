/** A jacket cut across, with the names of its parts: our own drawing. */

/** Parts, from inside to outside, with the point that each line leads to and the height of its word. */
const PARTS = [
  { word: 'specimen', x: 190, y: 118, at: 24 },
  { word: 'padding', x: 271, y: 97, at: 60 },
  { word: 'shell, upper half', x: 286, y: 80, at: 96 },
  { word: 'flange and seam', x: 334, y: 118, at: 132 },
  { word: 'shell, lower half', x: 284, y: 160, at: 168 },
  { word: 'foot', x: 262, y: 204, at: 204 },
] as const;

const WORDS_AT = 376;

const leader = ({ word, x, y, at }: (typeof PARTS)[number]): string =>
  `<path class="leader" d="M${x} ${y}L${WORDS_AT - 26} ${at}H${WORDS_AT - 6}"/><circle class="dot" cx="${x}" cy="${y}" r="2.5"/><text x="${WORDS_AT}" y="${at + 5}">${word}</text>`;

export const partsDrawing = (): string => `<figure class="parts">
<svg viewBox="0 0 510 232" role="img" aria-labelledby="parts-title">
<title id="parts-title">A jacket cut across: the specimen in its padding, the shell in two halves that meet at the flange, three feet below</title>
<path class="shell" d="M30 112V107H66C66 58 120 28 190 28S314 58 314 107H350V112Z"/>
<path class="shell" d="M30 124V129H66C66 178 120 208 190 208S314 178 314 129H350V124Z"/>
<path class="shell" d="M96 190L92 222H128L130 203ZM284 190L288 222H252L250 203Z"/>
<path class="padding" d="M74 112C74 64 124 36 190 36S306 64 306 112ZM74 124C74 172 124 200 190 200S306 172 306 124Z"/>
<path class="specimen" d="M92 118C92 84 140 50 190 50S288 84 288 118S240 186 190 186S92 152 92 118Z"/>
<path class="ground" d="M40 223H340"/>
${PARTS.map(leader).join('\n')}
</svg>
<figcaption>A jacket cut across. Both halves have feet, so that it stands either way up; the upper ones are left out here.</figcaption>
</figure>`;
