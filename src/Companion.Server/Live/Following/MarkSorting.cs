using Companion.Engine;
using Companion.Session.Following;
using Companion.Sight;

namespace Companion.Server.Live.Following;

/// <summary>
/// Tells block marks from candidate lists by where small digits stand in their cells. Common practice: places of a block are written
/// into the corners and along the edges, a list side by side in the middle; or each candidate has a place of its own, three by three.
/// </summary>
internal static class MarkSorting
{
    // Half the way to the next of three places, less what programs inset their marks by.
    private const float HomeReach = 0.12f;

    private const float MiddleBand = 0.17f;
    private const float Edge = 0.25f;

    /// <summary>
    /// Whether the marks of a grid have a place for each candidate; null where they say nothing about it, as a 1 in the upper left
    /// corner does.
    /// </summary>
    /// <param name="reading">The grid.</param>
    public static bool? HasCandidatePlaces(BoardReading reading)
    {
        var marks = reading.Cells.SelectMany(cell => cell.Marks).Where(mark => mark.Certainty >= CellReading.Sure).ToList();
        if (!marks.TrueForAll(IsAtHome))
            return false;
        return marks.Exists(mark => mark.Digit.Value is 2 or 4 or 6 or 8) ? true : null;
    }

    /// <summary>What stands in a cell.</summary>
    /// <param name="cell">The reading.</param>
    /// <param name="hasCandidatePlaces">Whether each candidate has a place of its own.</param>
    public static CellContent Content(CellReading cell, bool hasCandidatePlaces)
    {
        if (cell.Digit is { } digit)
            return new(digit);
        var middle = cell.Marks.Where(mark => hasCandidatePlaces || IsInList(mark, cell)).ToList();
        return new(
            null,
            Digits(cell.Marks.Except(middle)),
            Digits(middle),
            Digits(cell.Marks.Where(mark => mark.IsStruck)));
    }

    // A mark in the middle of the left or right edge stands alone there; the first and last of a long list have a neighbour.
    private static bool IsInList(MarkReading mark, CellReading cell)
    {
        if (!IsInMiddle(mark))
            return false;
        return mark.X is > Edge and < 1 - Edge
            || cell.Marks.Any(other => other != mark && IsInMiddle(other) && Math.Abs(other.X - mark.X) < Edge);
    }

    private static bool IsInMiddle(MarkReading mark) => Math.Abs(mark.Y - 0.5f) < MiddleBand;

    private static bool IsAtHome(MarkReading mark) =>
        Math.Abs(mark.X - (mark.Digit.Index % 3 + 0.5f) / 3) <= HomeReach && Math.Abs(mark.Y - (mark.Digit.Index / 3 + 0.5f) / 3) <= HomeReach;

    private static DigitSet Digits(IEnumerable<MarkReading> marks) => DigitSet.Of([.. marks.Select(mark => mark.Digit)]);
}
