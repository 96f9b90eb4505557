using System.Collections.Immutable;
using Companion.Engine;
using Companion.Sight;

namespace Companion.Server.CommandLine;

/// <summary>What <c>read</c> saw; with <c>--json</c> it is written as it stands.</summary>
/// <param name="Grid">81 characters, a point for cells that are empty or unsure.</param>
/// <param name="Place">The grid's corners, from the upper left clockwise.</param>
/// <param name="Givens">Cells of givens.</param>
/// <param name="Placed">Cells of digits that were entered.</param>
/// <param name="Marks">Cells with small digits.</param>
/// <param name="Unsure">Cells that somebody has to look at.</param>
internal sealed record ReadResult(
    string Grid,
    ImmutableArray<PixelPoint> Place,
    ImmutableArray<Cell> Givens,
    ImmutableArray<Cell> Placed,
    ImmutableArray<ReadMarks> Marks,
    ImmutableArray<UnsureCell> Unsure)
{
    /// <summary>Sorts a reading.</summary>
    /// <param name="place">Where the grid was found.</param>
    /// <param name="reading">What was read.</param>
    public static ReadResult Of(GridPlace place, BoardReading reading)
    {
        var sure = reading.Cells.Where(cell => !cell.IsUnsure).ToList();
        return new(
            string.Concat(reading.Cells.Select(cell => cell is { IsUnsure: false, Digit: { } digit } ? digit.ToString() : $"{BoardText.Blank}")),
            [place.TopLeft, place.TopRight, place.BottomRight, place.BottomLeft],
            [.. sure.Where(cell => cell.Digit is not null && cell.IsGiven != false).Select(cell => cell.Cell)],
            [.. sure.Where(cell => cell.Digit is not null && cell.IsGiven == false).Select(cell => cell.Cell)],
            [.. sure.Where(cell => !cell.Marks.IsEmpty).Select(ReadMarks.Of)],
            [.. reading.Cells.Where(cell => cell.IsUnsure).Select(cell => new UnsureCell(cell.Cell, cell.Digit, ReadMarks.Digits(cell, isStruck: null), cell.Certainty))]);
    }
}

/// <summary>The small digits of a cell.</summary>
/// <param name="Cell">The cell.</param>
/// <param name="Standing">Those that no line goes through.</param>
/// <param name="Struck">Those that a line goes through.</param>
internal sealed record ReadMarks(Cell Cell, DigitSet Standing, DigitSet Struck)
{
    /// <summary>Those of a reading.</summary>
    /// <param name="cell">The cell as it was read.</param>
    public static ReadMarks Of(CellReading cell) => new(cell.Cell, Digits(cell, isStruck: false), Digits(cell, isStruck: true));

    /// <summary>Some of them.</summary>
    /// <param name="cell">The cell as it was read.</param>
    /// <param name="isStruck">Which; null for all.</param>
    public static DigitSet Digits(CellReading cell, bool? isStruck) =>
        DigitSet.Of([.. cell.Marks.Where(mark => isStruck is null || mark.IsStruck == isStruck).Select(mark => mark.Digit)]);
}

/// <summary>A cell that was not read surely.</summary>
/// <param name="Cell">The cell.</param>
/// <param name="Digit">What it may be; null for no big digit.</param>
/// <param name="Marks">Small digits that it may have.</param>
/// <param name="Certainty">From 0 to 1.</param>
internal sealed record UnsureCell(Cell Cell, Digit? Digit, DigitSet Marks, float Certainty)
{
    /// <summary>The cell, and what it may be.</summary>
    public override string ToString() => Digit is { } digit ? $"{Cell} (perhaps {digit})" : $"{Cell}";
}
