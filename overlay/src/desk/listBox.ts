/**
 * What makes an element a list from which one option is chosen. A list box without an option is none (WAI-ARIA 1.2, required owned
 * elements): while it is empty it is a group, and keeps the focus all the same.
 * @param active The element of the chosen option, or undefined.
 */
export const listBox = (label: string, isEmpty: boolean, active: string | undefined) =>
  ({
    role: isEmpty ? 'group' : 'listbox',
    'aria-label': label,
    'aria-activedescendant': isEmpty ? undefined : active,
    tabIndex: 0,
  }) as const;
