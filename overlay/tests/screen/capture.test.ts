import { expect, test } from 'vitest';
import { whyNoCapture } from '../../src/screen/capture.ts';

const browser = (isSecureContext: boolean, mediaDevices: unknown) =>
  ({ isSecureContext, navigator: { mediaDevices } }) as Pick<Window, 'isSecureContext' | 'navigator'>;

test('a page by plain http from elsewhere is told where to open it', () => {
  expect(whyNoCapture(browser(false, undefined))).toContain('https');
});

test('a browser without screen capture is named as the reason', () => {
  expect(whyNoCapture(browser(true, {}))).toContain('This browser');
  expect(whyNoCapture(browser(true, undefined))).toContain('This browser');
});

test('otherwise there is no reason', () => {
  expect(whyNoCapture(browser(true, { getDisplayMedia: () => {} }))).toBeNull();
});
