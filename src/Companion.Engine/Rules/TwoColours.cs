namespace Companion.Engine.Rules;

/// <summary>
/// Cells painted in two colours along what joins them, so that joined cells have different colours: one colour is all true and
/// the other all false.
/// </summary>
/// <param name="First">One colour.</param>
/// <param name="Second">The other colour.</param>
internal readonly record struct TwoColours(CellSet First, CellSet Second)
{
    /// <summary>All painted cells.</summary>
    internal CellSet Cells => First | Second;

    /// <summary>Whether no cell had to be painted in both colours, which happens only on a board that cannot be filled.</summary>
    internal bool IsGood => !First.Overlaps(Second);

    /// <summary>
    /// The cells off the pattern that see a cell of each colour, and no two joined cells: others have an easier reason.
    /// </summary>
    /// <param name="joined">For each cell, by index, the cells that are joined to it.</param>
    internal CellSet SeenTwice(ReadOnlySpan<CellSet> joined)
    {
        var seen = (SeenBy(First) & SeenBy(Second)) - Cells;
        foreach (var cell in First)
        {
            foreach (var next in joined[cell.Index])
                seen -= cell.Peers & next.Peers;
        }

        return seen;
    }

    /// <summary>Paints all that is joined to a cell.</summary>
    /// <param name="start">The cell.</param>
    /// <param name="joined">For each cell, by index, the cells that are joined to it.</param>
    internal static TwoColours From(Cell start, ReadOnlySpan<CellSet> joined)
    {
        var (first, second) = (CellSet.Of(start), CellSet.Empty);
        for (var fresh = first; !fresh.IsEmpty;)
        {
            var next = JoinedTo(fresh, joined) - second;
            second |= next;
            fresh = JoinedTo(next, joined) - first;
            first |= fresh;
        }

        return new(first, second);
    }

    /// <summary>
    /// The painted cells without loose ends: as long as a cell that is not needed is joined to at most one other, it is left out.
    /// </summary>
    /// <param name="needed">The cells that stay in any case.</param>
    /// <param name="joined">For each cell, by index, the cells that are joined to it.</param>
    internal TwoColours Between(CellSet needed, ReadOnlySpan<CellSet> joined)
    {
        var (kept, before) = (Cells, CellSet.Empty);
        while (kept != before)
        {
            before = kept;
            foreach (var cell in before - needed)
            {
                if ((joined[cell.Index] & kept).Count < 2)
                    kept = kept.Without(cell);
            }
        }

        return new(First & kept, Second & kept);
    }

    /// <summary>The same with the colour of the first cell in reading order as the first.</summary>
    internal TwoColours InReadingOrder() => Second.Contains(Cells.First) ? new(Second, First) : this;

    /// <summary>The cells that see at least one of these.</summary>
    internal static CellSet SeenBy(CellSet cells)
    {
        var seen = CellSet.Empty;
        foreach (var cell in cells)
            seen |= cell.Peers;
        return seen;
    }

    private static CellSet JoinedTo(CellSet cells, ReadOnlySpan<CellSet> joined)
    {
        var all = CellSet.Empty;
        foreach (var cell in cells)
            all |= joined[cell.Index];
        return all;
    }
}
