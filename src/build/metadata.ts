/** Metadata of the worksheet functions as spreadsheet hosts read it (functions.json). */

import type { NamedArgument, WorksheetFunction } from '../functions/define.ts';
import { functions } from '../functions/index.ts';

/** Where the pages stand while nothing else is said: the address of the development server. */
export const LOCAL_BASE_URL = 'https://localhost:3000';

/** File name of a function's help page. */
export const helpFile = (id: string): string => `${id.toLowerCase().replaceAll('_', '-')}.html`;

const parameter = ({ name, description, optional, repeating }: NamedArgument) => ({
  name,
  description,
  type: 'any',
  // Everything may be a range: a single cell arrives as one row of one cell, and a range where one value is expected gets a reason.
  dimensionality: 'matrix',
  ...(optional && !repeating ? { optional } : {}),
  ...(repeating ? { repeating } : {}),
});

/**
 * Whether a call is told where its arguments stand: only then is a formula with a typed value, filled down over empty rows, known to be blank
 * there. Worth it where cells and typed values meet in one call.
 */
const wantsAddresses = ({ arguments: list }: WorksheetFunction): boolean =>
  list.filter(({ takes }) => takes === 'cells').length > 1 || list.at(-1)?.repeating === true;

const entry = (f: WorksheetFunction, baseUrl: string) => ({
  id: f.id,
  name: f.id,
  description: f.description,
  helpUrl: `${baseUrl}/help/${helpFile(f.id)}`,
  parameters: f.arguments.map(parameter),
  // Addresses are told only to functions whose result is a matrix.
  result: { type: 'any', dimensionality: 'matrix' },
  ...(wantsAddresses(f) ? { options: { requiresParameterAddresses: true } } : {}),
});

/** The whole metadata file. */
export const metadata = (baseUrl: string = LOCAL_BASE_URL) => ({
  allowErrorForDataTypeAny: true,
  functions: functions.map((f) => entry(f, baseUrl)),
});
