using Companion.Engine.Search;
using Companion.Engine.Tests.Corpus;

namespace Companion.Engine.Tests.Rules;

/// <summary>
/// Positions at which only nets help, and long ones: our own puzzles with some of their givens left out, so that less follows, taken
/// as far as subsets go.
/// </summary>
internal static class NetPositions
{
    private static readonly Lazy<IReadOnlyList<Board>> _all = new(() => [.. Make()]);

    public static IReadOnlyList<Board> All => _all.Value;

    private static IEnumerable<Board> Make()
    {
        var random = new Random(9);
        foreach (var puzzle in OwnPuzzles.All)
        {
            for (var missing = 1; missing <= 3; missing++)
            {
                var givens = CellSet.Of([.. Board.Parse(puzzle).Givens.OrderBy(_ => random.Next()).Skip(missing)]);
                var board = Board.Parse(string.Concat(puzzle.Select((digit, at) => givens.Contains(Cell.At(at)) ? digit : '.')));
                yield return Fixpoint.Of(board, RuleSets.Subsets);
            }
        }
    }
}
