/** `configs/palette.json`: every colour there is. */
export type Palette = typeof import('../../../configs/palette.json');

/** The names of the drawing's colours. */
export type Role = Exclude<keyof Palette, 'source' | 'board' | 'panel'>;

const others: readonly string[] = ['source', 'board', 'panel'];

export function roleNames(palette: Palette): Role[] {
  return Object.keys(palette).filter((name): name is Role => !others.includes(name));
}
