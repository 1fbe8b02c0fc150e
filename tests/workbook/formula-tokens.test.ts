import fc from 'fast-check';
import { expect, test } from 'vitest';
import { tokenise } from '../../src/workbook/formula-tokens.ts';

const cut = (formula: string) => tokenise(formula).map(({ kind, text }) => `${kind} ${text}`);

test.each([
  ['"a ""b"" c"&D1', ['string "a ""b"" c"', 'mark &', 'word D1']],
  ["'it''s [1] here'!A1", ["quoted 'it''s [1] here'", 'mark !', 'word A1']],
  ["T[[#All],[a']b]]+1", ['word T', "bracket [[#All],[a']b]]", 'mark +', 'word 1']],
  ['#REF!+#N/A+A1#', ['error #REF!', 'mark +', 'error #N/A', 'mark +', 'word A1', 'mark #']],
  ['1.5E-3-.5e2-2E', ['word 1.5E-3', 'mark -', 'word .5e2', 'mark -', 'word 2E']],
  ['$A$1:Größe \\x?', ['word $A$1', 'mark :', 'word Größe', 'space  ', 'word \\x?']],
  ['"open', ['string "open']],
  ['[open', ['bracket [open']],
])('%s', (formula, tokens) => {
  expect(cut(formula)).toEqual(tokens);
});

test('nothing is lost of any text', () => {
  const piece = fc.oneof(fc.string({ unit: 'binary' }), fc.constantFrom('"', "'", '[', ']', '#', '1E', '-', 'A1'));
  fc.assert(
    fc.property(fc.array(piece), (pieces) => {
      const formula = pieces.join('');
      expect(
        tokenise(formula)
          .map((token) => token.text)
          .join(''),
      ).toBe(formula);
    }),
    { seed: 20261125, numRuns: 500 },
  );
});
