using Companion.Engine;
using Companion.Session.State;

namespace Companion.Session.Boards;

/// <summary>Which candidates the marks on a grid say are gone.</summary>
public static class MarkMeaning
{
    /// <summary>The candidates that strikes, finished lists and finished block marks take out.</summary>
    /// <param name="grid">The grid.</param>
    /// <param name="writing">Cells whose lists are being written and say nothing yet.</param>
    public static CandidateSet Of(Grid grid, CellSet writing)
    {
        ArgumentNullException.ThrowIfNull(grid);
        var gone = grid.Struck;
        foreach (var cell in grid.CellMarks.Cells - writing)
            gone |= CandidateSet.Of(CellSet.Of(cell), ~grid.CellMarks[cell]);
        foreach (var mark in grid.BlockMarks)
        {
            if (Counts(grid, mark))
                gone |= CandidateSet.Of(mark.Block.Cells - mark.Places, mark.Digit);
        }

        return gone;
    }

    /// <summary>
    /// Whether a block mark says something: it has had two places, its block still wants the digit, and one of its places at
    /// least can still take it. A mark that nothing can fulfil is stale and says nothing.
    /// </summary>
    public static bool Counts(Grid grid, BlockMark mark)
    {
        ArgumentNullException.ThrowIfNull(grid);
        ArgumentNullException.ThrowIfNull(mark);
        return mark.IsComplete && !LivePlaces(grid, mark).IsEmpty;
    }

    /// <summary>The places of a block mark that no filled cell rules out.</summary>
    public static CellSet LivePlaces(Grid grid, BlockMark mark)
    {
        ArgumentNullException.ThrowIfNull(grid);
        ArgumentNullException.ThrowIfNull(mark);
        var holders = grid.Digits[mark.Digit];
        var live = CellSet.Empty;
        foreach (var place in mark.Places - grid.Filled)
        {
            if (!place.Peers.Overlaps(holders))
                live = live.With(place);
        }

        return live;
    }
}
