using System.Collections.Immutable;
using Companion.Engine;
using Companion.Engine.Rules;
using Companion.Session.Boards;
using Companion.Session.Entries;
using Companion.Session.State;
using Companion.Session.Watch;

namespace Companion.Session.Scanning;

/// <summary>
/// Finds what was entered because of a wrong digit: entries that followed by one deduction on the board as it was, and do not
/// follow on the board without the wrong digit and without the entries found before them.
/// </summary>
internal static class Dependents
{
    /// <summary>For each wrong entry, by number, the numbers of its dependents, oldest first.</summary>
    /// <param name="state">The state.</param>
    /// <param name="ladder">The rules by which something follows.</param>
    /// <param name="cancel">Stops between two rules.</param>
    public static ImmutableDictionary<int, ImmutableArray<int>> Of(SessionState state, Ladder ladder, CancellationToken cancel)
    {
        var dependents = ImmutableDictionary.CreateBuilder<int, ImmutableArray<int>>();
        foreach (var wrong in WrongDigit.On(state.Grid))
        {
            if (WrongDigit.EntryOf(state, wrong) is { } entry)
                dependents[entry.Number] = Of(state, entry, ladder, cancel);
        }

        return dependents.ToImmutable();
    }

    private static ImmutableArray<int> Of(SessionState state, Step wrong, Ladder ladder, CancellationToken cancel)
    {
        var later = state.History.Made.TakeWhile(step => step.Number != wrong.Number).Reverse().ToList();
        var (grid, writing) = (wrong.Grid, wrong.Writing);
        var found = ImmutableArray.CreateBuilder<int>();
        for (var index = 0; index < later.Count; index++)
        {
            var step = later[index];
            var before = (step.Grid, step.Writing);
            var after = index + 1 < later.Count ? (later[index + 1].Grid, later[index + 1].Writing) : (state.Grid, state.Writing);
            var change = Change.Between(before, after);
            if (!change.IsEmpty && Follows(change, before) && !Follows(change, (grid, writing)))
                found.Add(step.Number);
            else
                (grid, writing) = EntryEffects.Apply(grid, writing, step.Entry);
        }

        return found.ToImmutable();

        bool Follows(Change change, (Grid Grid, CellSet Writing) on) =>
            KnownBoard.Of(on.Grid, on.Writing, state.Used).Value is { } board && change.FollowsOn(board, ladder, cancel);
    }
}
