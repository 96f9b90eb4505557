import { type ReadonlySignal, signal } from '@preact/signals';

/** The page's width over its height, as it changes. */
export function pageAspect(page: Window): ReadonlySignal<number> {
  const read = () => (page.innerHeight > 0 ? page.innerWidth / page.innerHeight : 16 / 9);
  const aspect = signal(read());
  page.addEventListener('resize', () => {
    aspect.value = read();
  });
  return aspect;
}
