using Companion.Engine;

namespace Companion.Drawing.Pictures;

/// <summary>
/// Where a candidate stands in its cell: three rows of three in the digits' order, drawn together a little so that plates keep
/// clear of the cell's frame and of the tabs on its corners.
/// </summary>
internal static class CandidatePlace
{
    /// <summary>From the cell's middle to the outer columns and rows of candidates.</summary>
    internal const double Step = 0.285;

    /// <summary>Half the width of the plate under a candidate; two neighbours do not touch.</summary>
    internal const double PlateRadius = 0.14;

    internal static BoardPoint Of(Candidate candidate) =>
        MiddleOf(candidate.Cell) + new BoardPoint(candidate.Digit.Index % 3 - 1, candidate.Digit.Index / 3 - 1) * Step;

    internal static BoardPoint MiddleOf(Cell cell) => CornerOf(cell) + new BoardPoint(0.5, 0.5);

    internal static BoardPoint CornerOf(Cell cell) => new(cell.Column - 1, cell.Row - 1);
}
