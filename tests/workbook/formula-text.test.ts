import { describe, expect, test } from 'vitest';
import { toEngine, toStored } from '../../src/workbook/formula-text.ts';

const ids = ['JACKET.PLASTER', 'JACKET.SHELL_AREA', 'JACKET.CUT_LIST', 'JACKET.PLAN'];

describe('stored and typed', () => {
  test.each([
    ['_xldudf_JACKET_PLASTER(A1,4)', 'JACKET.PLASTER(A1,4)'],
    ['_xldudf_JACKET_SHELL_AREA(A1)', 'JACKET.SHELL_AREA(A1)'],
    [
      'SUM(_xldudf_JACKET_PLASTER(_xldudf_JACKET_SHELL_AREA(A1),4),1)',
      'SUM(JACKET.PLASTER(JACKET.SHELL_AREA(A1),4),1)',
    ],
    ['_xlfn.XLOOKUP(A1,B:B,C:C)', 'XLOOKUP(A1,B:B,C:C)'],
    ['_xlfn._xlws.FILTER(A1:A3,B1:B3>0)', 'FILTER(A1:A3,B1:B3>0)'],
    ['_xlfn._xlws.SORT(_xlfn.UNIQUE(A1:A3))', 'SORT(UNIQUE(A1:A3))'],
    ['_xlfn.STDEV.S(A1:A3)+STDEV(A1:A3)', 'STDEV.S(A1:A3)+STDEV(A1:A3)'],
    ['NETWORKDAYS.INTL(A1,A2)', 'NETWORKDAYS.INTL(A1,A2)'],
    ['_xlfn.LET(_xlpm.a,A1,_xlpm.b,_xlpm.a*2,_xlpm.a+_xlpm.b)', 'LET(a,A1,b,a*2,a+b)'],
    [
      '_xlfn.MAP(A1:A3,_xlfn.LAMBDA(_xlpm.x,_xldudf_JACKET_PLASTER(_xlpm.x,4)))',
      'MAP(A1:A3,LAMBDA(x,JACKET.PLASTER(x,4)))',
    ],
    ['_xlfn.LET(_xlpm.f,_xlfn.LAMBDA(_xlpm.x,_xlpm.x+1),_xlpm.f(2))+x', 'LET(f,LAMBDA(x,x+1),f(2))+x'],
    ['_xlfn.LET(_xlpm.a,{1,2;3,4},SUM(_xlpm.a))', 'LET(a,{1,2;3,4},SUM(a))'],
    ['"_xldudf_JACKET_PLASTER(" & _xldudf_JACKET_PLASTER(1,4)', '"_xldudf_JACKET_PLASTER(" & JACKET.PLASTER(1,4)'],
    ['"JACKET.PLASTER(1,4)"', '"JACKET.PLASTER(1,4)"'],
    ["'JACKET.PLASTER(1)'!A1", "'JACKET.PLASTER(1)'!A1"],
    ['Jackets[XLOOKUP(]', 'Jackets[XLOOKUP(]'],
    ['_xldudf_OTHER_THING(A1)', '_xldudf_OTHER_THING(A1)'],
    ['_xldudf_JACKET_LATER(A1)', '_xldudf_JACKET_LATER(A1)'],
    ['SUM(_xlfn.ANCHORARRAY(A15))', 'SUM(A15#)'],
    ['SUM(_xlfn.ANCHORARRAY(Plan!$A$15))', 'SUM(Plan!$A$15#)'],
    ["_xlfn.ANCHORARRAY('Cut list'!A2)*2", "'Cut list'!A2#*2"],
    ['SUM(Jackets[[#This Row],[Area]])', 'SUM(Jackets[[#This Row],[Area]])'],
    ['_xlfn.SINGLE(A1:A3)*2', 'SINGLE(A1:A3)*2'],
    ['XLOOKUP+1', 'XLOOKUP+1'],
  ])('%s', (stored, typed) => {
    expect(toEngine(stored, ids)).toBe(typed);
    expect(toStored(typed, ids)).toBe(stored);
  });
});

describe('reading alone', () => {
  test.each([
    ['_XLDUDF_jacket_plaster(A1,4)', 'JACKET.PLASTER(A1,4)'],
    ['_xldudf_Jacket_Shell_Area(A1)', 'JACKET.SHELL_AREA(A1)'],
    ['[2]!_xldudf_JACKET_PLASTER(A1,4)+[2]!other', 'JACKET.PLASTER(A1,4)+[2]!other'],
    ['[2]!_xldudf_OTHER_THING(A1)', '[2]!_xldudf_OTHER_THING(A1)'],
    ['_XLFN.xlookup(A1,B:B,C:C)', 'xlookup(A1,B:B,C:C)'],
  ])('%s', (stored, typed) => {
    expect(toEngine(stored, ids)).toBe(typed);
  });
});

describe('writing alone', () => {
  test.each([
    ['jacket.plaster(a1,4)', '_xldudf_JACKET_PLASTER(a1,4)'],
    ['xlookup(A1,B:B,C:C)', '_xlfn.XLOOKUP(A1,B:B,C:C)'],
    ['let(A_, 1, a_+1)', '_xlfn.LET(_xlpm.A_, 1, _xlpm.a_+1)'],
    [
      'SUM(Jackets[@Area],Jackets[@[Shell area]],Jackets[@])',
      'SUM(Jackets[[#This Row],[Area]],Jackets[[#This Row],[Shell area]],Jackets[#This Row])',
    ],
    ['@A1:A3+1', '_xlfn.SINGLE(A1:A3)+1'],
    ['@weights*2', '_xlfn.SINGLE(weights)*2'],
    ['@INDEX(A1:A3,2)+1', '_xlfn.SINGLE(INDEX(A1:A3,2))+1'],
    ["SUM(@'Cut list'!A1)", "SUM(_xlfn.SINGLE('Cut list'!A1))"],
    ['_xlfn.XLOOKUP(A1,B:B,C:C)', '_xlfn.XLOOKUP(A1,B:B,C:C)'],
    ['LET(a,1,Data!a+a)', '_xlfn.LET(_xlpm.a,1,Data!a+_xlpm.a)'],
  ])('%s', (typed, stored) => {
    expect(toStored(typed, ids)).toBe(stored);
  });

  test('another list of newer functions', () => {
    expect(toStored('NEWEST(SUM(A1))', ids, new Map([['NEWEST', '_xlfn.']]))).toBe('_xlfn.NEWEST(SUM(A1))');
  });
});

test('text that is no formula comes back as it went in', () => {
  for (const text of ['', '"open', "'open", '[open', ')))', 'LET(', '@', '#', 'A1##', '((,', '_xl']) {
    expect(toEngine(text, ids)).toBe(text);
  }
});
