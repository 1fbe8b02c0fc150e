import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { expect, test } from 'vitest';

const require = createRequire(import.meta.url);
const load = require('../../src/build/univer-loader.cjs') as (this: { resourcePath: string }, source: string) => string;
const file = require.resolve('@univerjs/engine-formula').replace(/lib[\\/].*$/, 'lib/es/index.js');
const source = readFileSync(file, 'utf8');

test('both changes are made in the engine that is installed', () => {
  const changed = load.call({ resourcePath: file }, source);
  expect(changed).toContain('function _defineProperty(e, r, t) {\n\te[r] = t;\n\treturn e;\n}');
  expect(changed.match(/FORMULA_CACHE_LRU_COUNT(?:\$2)? = 5e4;/g)).toHaveLength(2);
  expect(changed).not.toMatch(/FORMULA_CACHE_LRU_COUNT(?:\$2)? = [25]e3;/);
});

test('another source stops the build', () => {
  const otherHelper = source.replace('function _defineProperty(e, r, t)', 'function _define(e, r, t)');
  expect(() => load.call({ resourcePath: file }, otherHelper)).toThrow(/class-field helper/);
  const otherCaches = source
    .replace('FORMULA_CACHE_LRU_COUNT = 5e3', 'FORMULA_CACHE_LRU_COUNT = 6e3')
    .replace('= 2e3;', '= 3e3;');
  expect(() => load.call({ resourcePath: file }, otherCaches)).toThrow(/formula caches/);
});
