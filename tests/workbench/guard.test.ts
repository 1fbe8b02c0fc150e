import { describe, expect, test } from 'vitest';
import { isHeldBack, reasonFor } from '../../src/workbench/guard.ts';

describe('what goes through', () => {
  test.each([
    'sheet.command.set-range-values',
    'sheet.command.clear-selection-content',
    'univer.command.copy',
    'univer.command.paste',
    'univer.command.undo',
    'sheet.command.set-worksheet-activate',
    'sheet.operation.set-selections',
    'doc.command.insert-text',
  ])('%s', (command) => {
    expect(isHeldBack(command)).toBe(false);
  });
});

describe('what the file could not keep, and why', () => {
  test.each([
    ['sheet.command.insert-row-before', 'Rows and columns'],
    ['sheet.command.remove-col', 'Rows and columns'],
    ['sheet.command.delete-range-move-up', 'Rows and columns'],
    ['sheet.command.append-row', 'Rows and columns'],
    ['univer.command.cut', 'Copy and paste'],
    ['sheet.command.move-range', 'Copy and paste'],
    ['sheet.command.insert-sheet', 'Sheets cannot'],
    ['sheet.command.set-worksheet-name', 'Sheets cannot'],
    ['sheet.command.add-worksheet-merge-all', 'merged'],
    ['sheet.command.set-range-bold', 'Formats stay'],
    ['sheet.command.numfmt.set.percent', 'Formats stay'],
    ['sheet.command.paste-format', 'Formats stay'],
    ['sheet.command.addDataValidation', 'may be typed'],
    ['data-validation.command.removeAll', 'may be typed'],
    ['sheet.command.add-conditional-rule', 'Conditional formats'],
    ['sheet.command.set-defined-name', 'Names stay'],
    ['sheet.command.set-row-frozen', 'stays in view'],
    ['sheet.command.add-range-protection', 'Protection'],
  ])('%s', (command, words) => {
    expect(isHeldBack(command)).toBe(true);
    expect(reasonFor(command)).toContain(words);
  });
});
