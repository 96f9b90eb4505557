using System.Collections.Immutable;

namespace Companion.Session.Shows;

/// <summary>Cuts a show into the puzzles that were worked on.</summary>
internal static class ShowPuzzles
{
    /// <summary>The moments of each puzzle, from its loading to the next one's, in order; an undo across a loading is with the puzzle that it went back to.</summary>
    /// <param name="show">The show.</param>
    internal static ImmutableArray<ImmutableArray<Moment>> Of(StoredShow show) =>
    [
        .. show.Moments.Where(moment => moment.State.Grid.Puzzle is not null)
            .GroupBy(moment => moment.State.Grid.Loading).OrderBy(loading => loading.Key).Select(loading => loading.ToImmutableArray()),
    ];
}
