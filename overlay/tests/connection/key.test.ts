// @vitest-environment happy-dom
import { beforeEach, expect, test } from 'vitest';
import { takeKey } from '../../src/connection/key.ts';

beforeEach(() => {
  sessionStorage.clear();
  history.replaceState(null, '', '/overlay?scene=main');
});

const take = (store: Storage | null = sessionStorage) => takeKey(location, history, store);

test('the key leaves the address bar as soon as it was read, and the scene stays', () => {
  history.replaceState(null, '', '/overlay?scene=Camera%20left#k=a_b-c');

  expect(take()).toEqual({ key: 'a_b-c', isNew: true });
  expect(location.href).toMatch(/\/overlay\?scene=Camera%20left$/);
});

test('a reload finds the key of its tab, which has entered already', () => {
  history.replaceState(null, '', '/overlay#k=first');
  take();

  expect(take()).toEqual({ key: 'first', isNew: false });
});

test('another page of the same tab does not take it', () => {
  history.replaceState(null, '', '/overlay#k=first');
  take();
  history.replaceState(null, '', '/stage');

  expect(take()).toEqual({ key: null, isNew: false });
});

test('a newer link replaces the key', () => {
  history.replaceState(null, '', '/overlay#k=first');
  take();
  history.replaceState(null, '', '/overlay#k=second');

  expect(take()).toEqual({ key: 'second', isNew: true });
});

test('where nothing is kept, the link alone still works', () => {
  history.replaceState(null, '', '/overlay#k=first');

  expect(take(null)).toEqual({ key: 'first', isNew: true });
  expect(take(null)).toEqual({ key: null, isNew: false });
});
