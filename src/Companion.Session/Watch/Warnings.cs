using System.Collections.Immutable;
using Companion.Session.Planning;
using Companion.Session.Scanning;
using Companion.Session.State;
using Companion.Session.Views;

namespace Companion.Session.Watch;

/// <summary>All that the companion warns the presenter of.</summary>
public static class Warnings
{
    /// <summary>The warnings about a state, most urgent first, of one kind the oldest first.</summary>
    /// <param name="state">The state.</param>
    /// <param name="scan">
    /// The last finished scan, or null. It may be of an older state: all but the length of time that something has been open and
    /// what depends on a wrong digit is computed from the state alone.
    /// </param>
    /// <param name="outlook">The last outlook on the featured rules, or null. It may be of an older state.</param>
    /// <param name="voice">The words.</param>
    public static ImmutableArray<WatchNote> Of(SessionState state, ScanResult? scan, Outlook? outlook, Voice voice)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(voice);
        if (state.Grid.Puzzle is not { } puzzle)
            return [];
        var current = scan?.Loading == state.Grid.Loading ? scan : null;
        IEnumerable<WatchNote> notes =
        [
            .. HouseBroken.Notes(state),
            .. WrongDigit.Notes(state, current),
            .. WrongStrike.Notes(state, puzzle.Solution),
            .. StaleMark.Notes(state),
            .. FreeDigit.Notes(state, puzzle.Solution),
            .. EasierOpen.Notes(state, current, voice),
            .. AirOutdated.Notes(state),
            .. FeaturedAhead.Notes(state, outlook?.Loading == state.Grid.Loading ? outlook : null, voice),
        ];
        return [.. notes.OrderBy(note => note.Kind).ThenBy(note => note.Since)];
    }
}
