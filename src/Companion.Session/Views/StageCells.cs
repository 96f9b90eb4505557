using System.Collections.Immutable;
using Companion.Engine;
using Companion.Session.State;

namespace Companion.Session.Views;

/// <summary>Makes the cells as they are on air.</summary>
internal static class StageCells
{
    public static ImmutableArray<StageCell> Of(Grid grid) => [.. CellSet.All.Select(cell => new StageCell(
        grid.DigitAt(cell),
        grid.Givens.Contains(cell),
        grid.CellMarks[cell] is { IsEmpty: false } list ? list : null,
        grid.BlockMarks.In(cell),
        grid.Struck[cell]))];
}
