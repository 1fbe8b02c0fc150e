import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join, resolve } from 'node:path';
import { ManifestUtil } from '@microsoft/app-manifest';
import { describe, expect, it } from 'vitest';
import { metadata } from '../../src/build/metadata.ts';
import { functions } from '../../src/functions/index.ts';

const root = resolve(import.meta.dirname, '../..');

type Json = Record<string, unknown>;
interface Metadata {
  allowErrorForDataTypeAny?: boolean;
  functions: Json[];
}

// The published schema of the unified manifest describes the same metadata. What differs there: the namespace stands inside, options are flat,
// one of them is spelt otherwise, and errors as arguments are not known. The rest is compared as it is.
const schemas = join(createRequire(import.meta.url).resolve('@microsoft/app-manifest'), '../json-schemas/teams');
interface Definition {
  properties: Record<string, Json>;
  additionalProperties?: boolean;
}
const { definitions } = JSON.parse(readFileSync(join(schemas, 'v1.30/MicrosoftTeams.schema.json'), 'utf8')) as {
  definitions: Record<string, Definition>;
};

// The schema lets any further field pass, and names the types of values only in a description. Both are made strict here.
const TYPES = { type: 'string', enum: ['any', 'boolean', 'number', 'string'] };
definitions.extensionFunctionParameter!.properties.type = TYPES;
definitions.extensionResult!.properties.type = TYPES;
for (const name of ['extensionFunction', 'extensionFunctionParameter', 'extensionResult'])
  definitions[name]!.additionalProperties = false;

const schema = {
  $schema: 'http://json-schema.org/draft-04/schema#',
  definitions,
  $ref: '#/definitions/extensionCustomFunctions',
};

const inTheirForm = ({ allowErrorForDataTypeAny: _, ...rest }: Metadata): Json => ({
  ...rest,
  namespace: { id: 'JACKET', name: 'JACKET' },
  functions: rest.functions.map(({ options, ...f }) => {
    const { requiresParameterAddresses, ...others } = (options ?? {}) as Json;
    return {
      ...f,
      ...others,
      ...(requiresParameterAddresses === undefined ? {} : { requiresParameterAddress: requiresParameterAddresses }),
    };
  }),
});

/** Complaints of the schema, empty if there are none. */
const complaints = async (given: unknown): Promise<string[]> =>
  ManifestUtil.validateManifestAgainstSchema(inTheirForm(given as Metadata) as never, structuredClone(schema) as never);

const copy = (): Metadata => structuredClone(metadata()) as unknown as Metadata;

describe('functions.json', () => {
  it('holds to the published schema', async () => {
    expect(await complaints(metadata())).toEqual([]);
  });

  it.each<[string, (m: Metadata) => void]>([
    ['an id with a hyphen', (m) => Object.assign(m.functions[0]!, { id: 'NOT-AN-ID' })],
    ['a short id', (m) => Object.assign(m.functions[0]!, { id: 'AB' })],
    ['an unknown type', (m) => Object.assign((m.functions[0]!.parameters as Json[])[0]!, { type: 'date' })],
    ['an unknown shape', (m) => Object.assign((m.functions[0]!.parameters as Json[])[0]!, { dimensionality: 'cube' })],
    ['no result', (m) => delete m.functions[0]!.result],
    ['no parameters', (m) => delete m.functions[0]!.parameters],
    ['an unknown field', (m) => Object.assign(m.functions[0]!, { colour: 'clay' })],
    ['an unknown option', (m) => Object.assign(m.functions[0]!, { options: { sometimes: true } })],
    ['no functions', (m) => m.functions.splice(0)],
  ])('is caught with %s', async (_, plant) => {
    const planted = copy();
    plant(planted);
    expect(await complaints(planted)).not.toEqual([]);
  });

  it('says that errors are handed over, which the schema does not know', () => {
    expect(metadata().allowErrorForDataTypeAny).toBe(true);
  });

  it('keeps to the lengths that every host takes', () => {
    for (const f of metadata().functions) {
      expect(f.description.length, f.id).toBeLessThanOrEqual(128);
      for (const p of f.parameters) {
        expect(p.description.length, `${f.id} ${p.name}`).toBeLessThanOrEqual(128);
        expect(p.name.length, `${f.id} ${p.name}`).toBeLessThanOrEqual(64);
      }
    }
  });

  it('repeats the last parameter only, and none is required after one that may be left out', () => {
    for (const f of metadata().functions) {
      const repeats = f.parameters.map((p) => 'repeating' in p);
      expect(repeats.slice(0, -1), f.id).not.toContain(true);
      const optional = f.parameters.map((p) => 'optional' in p || 'repeating' in p);
      expect([...optional].sort(), f.id).toEqual(optional);
    }
  });

  it('asks for addresses only where the result is a matrix', () => {
    for (const f of metadata().functions) {
      if ('options' in f) expect(f.result.dimensionality, f.id).toBe('matrix');
    }
    expect(
      metadata()
        .functions.filter((f) => 'options' in f)
        .map(({ id }) => id),
    ).toContain('PLASTER');
  });

  it('is the committed file', () => {
    expect(JSON.parse(readFileSync(join(root, 'manifest/functions.json'), 'utf8'))).toEqual(metadata());
  });
});

describe('ids', () => {
  const frozen = readFileSync(join(import.meta.dirname, 'ids.txt'), 'utf8')
    .split('\n')
    .filter(Boolean);
  const ids = functions.map(({ id }) => id);

  it('that were once given out are all still there: workbooks hold them', () => {
    for (const id of frozen) expect(ids, `${id} is gone or renamed`).toContain(id);
  });

  it('that are new are written down in ids.txt, at its end', () => {
    for (const id of ids) expect(frozen, `append ${id} to tests/manifest/ids.txt`).toContain(id);
  });

  it('are each there once, also with dots read as underscores, and look like no cell', () => {
    expect(new Set(frozen.map((id) => id.replaceAll('.', '_').toUpperCase())).size).toBe(frozen.length);
    for (const id of frozen) {
      expect(id).toMatch(/^[A-Z][A-Z0-9_.]{2,63}$/);
      expect(id).not.toMatch(/^[A-Z]{1,3}\d+$/);
    }
  });
});
