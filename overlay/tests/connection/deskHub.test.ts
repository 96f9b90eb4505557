import { expect, test } from 'vitest';
import { deskHubOf } from '../../src/connection/deskHub.ts';

test('the presenter and a co-host have a hub each, and so a cookie each', () => {
  expect(deskHubOf('/presenter')).toBe('/hubs/presenter');
  expect(deskHubOf('/desk')).toBe('/hubs/desk');
});
