import { describe, expect, it } from 'vitest';
import { guardedMemory } from '../../src/taskpane/memory.ts';

const refuse = (): never => {
  throw new Error('refused');
};

describe('memory', () => {
  it('keeps words in the store of the browser', () => {
    const store = new Map<string, string>();
    const open = () => ({
      getItem: (key: string) => store.get(key) ?? null,
      setItem: (key: string, value: string) => void store.set(key, value),
    });
    guardedMemory(open).setItem('read', 'yes');
    expect(guardedMemory(open).getItem('read')).toBe('yes');
    expect(guardedMemory(open).getItem('other')).toBeNull();
  });

  it.each([
    ['there is no store', refuse],
    ['the store may not be read', () => ({ getItem: refuse, setItem: refuse })],
    ['the store is full', () => ({ getItem: () => null, setItem: refuse })],
  ])('remembers for a while where %s', (_, open) => {
    const memory = guardedMemory(open);
    expect(memory.getItem('read')).toBeNull();
    memory.setItem('read', 'yes');
    expect(memory.getItem('read')).toBe('yes');
  });
});
