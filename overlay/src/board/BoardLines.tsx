const inner = [1, 2, 4, 5, 7, 8].map((at) => `M${at} 0V9M0 ${at}H9`).join('');

/** The lines of the board: thin between cells, thick round blocks. */
export function BoardLines() {
  return (
    <g>
      <path class="thin" d={inner} />
      <path class="thick" d="M3 0V9M6 0V9M0 3H9M0 6H9M0 0H9V9H0Z" />
    </g>
  );
}
