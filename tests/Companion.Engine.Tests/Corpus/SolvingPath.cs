using Companion.Engine.Rules;

namespace Companion.Engine.Tests.Corpus;

/// <summary>The way through a puzzle that always takes the easiest deduction.</summary>
internal static class SolvingPath
{
    /// <summary>The boards on the way, the first one included, to the full grid or to where no rule finds anything.</summary>
    public static IEnumerable<Board> Boards(Board start)
    {
        yield return start;
        for (var board = start; Ladder.Standard.Easiest(board) is { } next;)
        {
            board = board.Apply(next);
            yield return board;
        }
    }
}
