import type { Role } from './palette.ts';

/** `firstRole` as CSS writes it: `--first-role`. */
export function variable(name: string, prefix = ''): string {
  return `--${prefix}${name.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`)}`;
}

/** The colour of a role, for `fill` and `stroke`. */
export function paint(role: Role): string {
  return `var(${variable(role)})`;
}

/** The colour in which text is readable on a plate of a role's colour. */
export function ink(role: Role): string {
  return `var(${variable(`${role}Ink`)})`;
}
