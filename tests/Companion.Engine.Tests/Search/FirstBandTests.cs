namespace Companion.Engine.Tests.Search;

public sealed class FirstBandTests
{
    // Source: B. Felgenhauer, F. Jarvis, "Enumerating possible Sudoku grids" (2005): 56 x 6^6, the figure from memory.
    [Fact]
    public void With_block_1_given_blocks_2_and_3_can_be_filled_in_2612736_ways()
    {
        var board = Board.Parse("123......456......789......".PadRight(Cell.Count, '.'));
        var missing = HouseSet.All.Select(board.MissingFrom).ToArray();

        Assert.Equal(2_612_736, Ways(missing, [.. Chute.At(0).Cells & board.Open]));
    }

    // A plain walk over the vocabulary: the first cell takes each digit that its row and its block both miss.
    private static int Ways(DigitSet[] missing, ReadOnlySpan<Cell> cells)
    {
        if (cells.IsEmpty)
            return 1;
        var ways = 0;
        ref var row = ref missing[House.Row(cells[0].Row).Index];
        ref var block = ref missing[House.Block(cells[0].Block).Index];
        foreach (var digit in row & block)
        {
            (row, block) = (row.Without(digit), block.Without(digit));
            ways += Ways(missing, cells[1..]);
            (row, block) = (row.With(digit), block.With(digit));
        }

        return ways;
    }
}
