using Companion.Engine;
using Companion.Session.Entries;
using Companion.Session.Scanning;
using Companion.Session.State;
using Companion.Session.Views;

namespace Companion.Session.Watch;

/// <summary>Warns of placed digits that disagree with the only solution, and says what was entered because of them.</summary>
internal static class WrongDigit
{
    public static IEnumerable<WatchNote> Notes(SessionState state, ScanResult? scan)
    {
        foreach (var wrong in On(state.Grid))
        {
            var labels = EntryOf(state, wrong) is { } entry ? DependentsOf(state, scan, entry) : [];
            var advice = labels.Count == 0
                ? "take it out."
                : $"take it out, and look again at what followed from it: {ListText.Of(labels)}.";
            yield return Beginning.Note(
                state,
                WatchKind.WrongDigit,
                $"{wrong.Digit} in {wrong.Cell} disagrees with the only solution: {advice}",
                CellSet.Of(wrong.Cell),
                (grid, _) => grid.Placed.Contains(wrong));
        }
    }

    /// <summary>The wrong digits on a grid in reading order.</summary>
    public static IEnumerable<Candidate> On(Grid grid) =>
        grid.Placed.Where(placed => grid.Puzzle is { } puzzle && !puzzle.Solution.Holds(placed));

    /// <summary>The entry that placed a digit which stands on the grid.</summary>
    public static Step? EntryOf(SessionState state, Candidate placed) =>
        Beginning.Of(state, (grid, _) => grid.Placed.Contains(placed));

    private static List<string> DependentsOf(SessionState state, ScanResult? scan, Step wrong)
    {
        var numbers = scan?.Dependents.GetValueOrDefault(wrong.Number, []) ?? [];
        return [.. state.History.Made.Where(step => numbers.Contains(step.Number)).Select(step => step.Label).Reverse()];
    }
}
