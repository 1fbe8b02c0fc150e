import type { Output } from './output.ts';
export const FILL_USAGE = 'npm run fill -- [--check] IN OUT';
export async function fill(_args: readonly string[], output: Output): Promise<number> {
  output.error(FILL_USAGE);
  return 2;
}
