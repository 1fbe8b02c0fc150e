// Two changes to the grid engine's source (version 0.25.1), made while bundling. Each is checked, so that another version fails the build
// instead of silently losing them.
//
// 1. Class fields are set through a slow helper: plain assignment saves a sixth of each calculation.
// 2. The caches of parsed formulas hold 2,000 and 5,000: a larger sheet is parsed anew at every edit. They hold 50,000 here.

const FIELD_HELPER = /function _defineProperty\(e, r, t\) \{\s*return [\s\S]*?\n\}/;
const PLAIN_ASSIGNMENT = 'function _defineProperty(e, r, t) {\n\te[r] = t;\n\treturn e;\n}';
const CACHE_SIZES = /const FORMULA_CACHE_LRU_COUNT(\$2)? = [25]e3;/g;
const NUMBER_OF_CACHES = 2;
const LARGER_CACHE = 'const FORMULA_CACHE_LRU_COUNT$1 = 5e4;';

module.exports = function univerLoader(source) {
  if (!FIELD_HELPER.test(source))
    throw new Error(`The class-field helper in ${this.resourcePath} is another one: is this still version 0.25.1?`);
  const assigned = source.replace(FIELD_HELPER, PLAIN_ASSIGNMENT);
  if (!/engine-formula/.test(this.resourcePath)) return assigned;
  if (assigned.match(CACHE_SIZES)?.length !== NUMBER_OF_CACHES)
    throw new Error('The formula caches of the grid engine are other ones: is this still version 0.25.1?');
  return assigned.replace(CACHE_SIZES, LARGER_CACHE);
};
