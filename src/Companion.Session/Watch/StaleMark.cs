using Companion.Engine;
using Companion.Session.Entries;
using Companion.Session.State;
using Companion.Session.Views;

namespace Companion.Session.Watch;

/// <summary>
/// Warns of marks whose digit stands already in a house of their cell. One warning a digit: a placement makes many.
/// </summary>
internal static class StaleMark
{
    public static IEnumerable<WatchNote> Notes(SessionState state)
    {
        foreach (var digit in Digit.All)
        {
            var stale = On(state.Grid, digit);
            if (stale.IsEmpty)
                continue;
            var text = stale.Count == 1
                ? $"The mark {digit} in {stale.First} is stale: a {digit} that it sees stands already. Take it out."
                : $"The marks {digit} in {ListText.Of(stale)} are stale: a {digit} that they see stands already. Take them out.";
            yield return Beginning.Note(state, WatchKind.StaleMark, text, stale, (grid, _) => On(grid, digit).Overlaps(stale));
        }
    }

    private static CellSet On(Grid grid, Digit digit)
    {
        var seeing = CellSet.Empty;
        foreach (var holder in grid.Digits[digit])
            seeing |= holder.Peers;

        // A struck digit is marked as gone for all to see.
        return (grid.CellMarks[digit] | grid.BlockMarks[digit]) & seeing - grid.Struck[digit];
    }
}
