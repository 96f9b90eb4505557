using System.Diagnostics;
using Companion.Engine;
using Companion.Session.Events;
using Companion.Session.State;

namespace Companion.Session.Entries;

/// <summary>
/// What an entry does to the grid and to the lists being written. Takes any grid: Watch plays entries on other grids too.
/// </summary>
internal static class EntryEffects
{
    public static (Grid Grid, CellSet Writing) Apply(Grid grid, CellSet writing, Event entry)
    {
        var next = entry switch
        {
            DigitPlaced placed => grid.Place(new(placed.Cell, placed.Digit)),
            CellsErased erased => grid.Erase(erased.Cells),
            BlockMarkChanged mark => grid with { BlockMarks = Change(grid.BlockMarks, mark) },
            CellMarkChanged list => grid with { CellMarks = Change(grid.CellMarks, list.Cells, list.Digit, list.IsSet) },
            StrikeChanged strike => grid with { Struck = Change(grid.Struck, strike.Cells, strike.Digit, strike.IsStruck) },
            GridCleared => grid.Bare(),
            _ => throw new UnreachableException($"{entry} is no entry."),
        };
        return (next, Writing(writing, entry) & next.CellMarks.Cells);
    }

    // A list is finished by an entry elsewhere. What is taken out of a finished list counts at once, since the rest was finished;
    // what is written into one opens it again.
    private static CellSet Writing(CellSet writing, Event entry) => entry switch
    {
        CellMarkChanged { IsSet: true } list => list.Cells,
        CellMarkChanged list => writing & list.Cells,
        StrikeChanged strike => writing & strike.Cells,
        BlockMarkChanged mark => writing & mark.Cells,
        _ => CellSet.Empty,
    };

    private static BlockMarks Change(BlockMarks marks, BlockMarkChanged change) =>
        change.IsSet ? marks.With(change.Cells, change.Digit) : marks.Without(change.Cells, change.Digit);

    private static CandidateSet Change(in CandidateSet candidates, CellSet cells, Digit digit, bool isSet) =>
        candidates.WithPlane(digit, isSet ? candidates[digit] | cells : candidates[digit] - cells);
}
