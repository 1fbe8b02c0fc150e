import { expect, test } from 'vitest';
import { INVENTED, thirtySpecimens } from './thirty-specimens.ts';

test('the plans of thirty invented specimens are those of the committed table', async () => {
  expect(INVENTED).toHaveLength(30);
  await expect(thirtySpecimens()).toMatchFileSnapshot('thirty-specimens.tsv');
});
