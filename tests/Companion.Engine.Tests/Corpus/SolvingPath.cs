using Companion.Engine.Rules;

namespace Companion.Engine.Tests.Corpus;

/// <summary>The way through a puzzle that always takes the easiest deduction, but for those of last resorts.</summary>
internal static class SolvingPath
{
    private static readonly Ladder Rules = Ladder.Standard.WithoutLastResorts();

    /// <summary>The boards on the way, the first one included, to the full grid or to where no rule finds anything.</summary>
    public static IEnumerable<Board> Boards(Board start)
    {
        yield return start;
        for (var board = start; Rules.Easiest(board) is { } next;)
        {
            board = board.Apply(next);
            yield return board;
        }
    }
}
