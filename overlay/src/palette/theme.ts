/** `?theme=dark` or `?theme=light` asks for one; without it the page follows the system. */
export function takeTheme(page: Location, root: HTMLElement): void {
  const asked = new URLSearchParams(page.search).get('theme');
  if (asked === 'dark' || asked === 'light') root.dataset.theme = asked;
}
