namespace Companion.Engine;

/// <summary>The fixed tables of the grid: which cells lie in which house, and who sees whom.</summary>
internal static class Geometry
{
    internal static readonly CellSet[] HouseCells = [.. Enumerable.Range(0, House.Count).Select(HouseAt)];

    internal static readonly CellSet[] ChuteCells = [.. Enumerable.Range(0, Chute.Count).Select(ChuteAt)];

    internal static readonly HouseSet[] HousesOf =
        [.. Enumerable.Range(0, Cell.Count).Select(i => new HouseSet(RowBit(i) | ColumnBit(i) | BlockBit(i)))];

    internal static readonly CellSet[] Peers = [.. Enumerable.Range(0, Cell.Count).Select(PeersAt)];

    // The order in which houses are looked at for singles: a block is taken in at a glance, a line must be followed.
    internal static readonly House[] BlocksFirst = [.. HouseSet.Blocks, .. HouseSet.Lines];

    // Cell indices of each house in reading order: 27 x 9.
    internal static readonly byte[] HouseCellIndex =
        [.. Enumerable.Range(0, House.Count).SelectMany(h => Enumerable.Range(0, 9).Select(p => (byte)CellIndex(h, p)))];

    private static int CellIndex(int house, int place) => house switch
    {
        < 9 => house * 9 + place,
        < 18 => place * 9 + house - 9,
        _ => (house - 18) / 3 * 27 + (house - 18) % 3 * 3 + place / 3 * 9 + place % 3,
    };

    private static CellSet HouseAt(int house)
    {
        var cells = CellSet.Empty;
        for (var place = 0; place < 9; place++)
            cells = cells.With(Cell.Unchecked(CellIndex(house, place)));
        return cells;
    }

    private static CellSet ChuteAt(int chute)
    {
        var cells = CellSet.Empty;
        for (var line = 0; line < 3; line++)
            cells |= HouseAt(chute < 3 ? chute * 3 + line : 9 + (chute - 3) * 3 + line);
        return cells;
    }

    private static CellSet PeersAt(int index)
    {
        var cell = Cell.Unchecked(index);
        return (HouseAt(cell.Row - 1) | HouseAt(9 + cell.Column - 1) | HouseAt(18 + cell.Block - 1)).Without(cell);
    }

    private static uint RowBit(int index) => 1u << (index / 9);

    private static uint ColumnBit(int index) => 1u << (9 + index % 9);

    private static uint BlockBit(int index) => 1u << (18 + index / 27 * 3 + index % 9 / 3);
}
