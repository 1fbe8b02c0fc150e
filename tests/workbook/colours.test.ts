import { describe, expect, test } from 'vitest';
import { colourOf, readTheme, tinted } from '../../src/workbook/colours.ts';
import { XmlReader } from '../../src/workbook/xml.ts';

const refuse = () => new Error('broken');
const element = (xml: string): XmlReader => {
  const reader = new XmlReader(xml, refuse);
  reader.next();
  return reader;
};

const THEME = ['FFFFFF', '000000', 'EEECE1', '1F497D', '4F81BD'];

describe('colours', () => {
  test.each([
    ['<color rgb="FF8A4B2F"/>', '#8A4B2F'],
    ['<color rgb="8a4b2f"/>', '#8A4B2F'],
    ['<color theme="1"/>', '#000000'],
    ['<color indexed="2"/>', '#FF0000'],
    ['<color indexed="10"/>', '#FF0000'],
    ['<color auto="1"/>', undefined],
    ['<color theme="99"/>', undefined],
    ['<color indexed="64"/>', undefined],
    ['<color rgb="nonsense"/>', undefined],
  ])('%s', (xml, colour) => {
    expect(colourOf(element(xml), THEME)).toBe(colour);
  });

  test('a tint lightens or darkens', () => {
    expect(tinted('000000', 0.5)).toBe('808080');
    expect(tinted('FFFFFF', -0.5)).toBe('808080');
    expect(tinted('4F81BD', 0)).toBe('4F81BD');
    expect(colourOf(element('<color theme="0" tint="-0.25"/>'), THEME)).toBe('#BFBFBF');
  });
});

test('a theme in the order in which cells number its colours', () => {
  const xml = `<a:theme xmlns:a="urn:a"><a:themeElements><a:clrScheme name="x">
    <a:dk1><a:sysClr val="windowText" lastClr="000000"/></a:dk1><a:lt1><a:sysClr val="window" lastClr="FFFFFF"/></a:lt1>
    <a:dk2><a:srgbClr val="1f497d"/></a:dk2><a:lt2><a:srgbClr val="EEECE1"/></a:lt2><a:accent1><a:srgbClr val="4F81BD"/></a:accent1>
  </a:clrScheme></a:themeElements></a:theme>`;
  expect(readTheme(new XmlReader(xml, refuse)).slice(0, 5)).toEqual(THEME);
});
