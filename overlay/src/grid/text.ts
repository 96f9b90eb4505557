/** How far below the middle of a digit its base line lies, as a share of its size: half the height of a digit. */
export const drop = 0.355;
