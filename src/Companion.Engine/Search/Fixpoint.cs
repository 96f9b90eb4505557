using Companion.Engine.Rules;

namespace Companion.Engine.Search;

/// <summary>
/// How far some rules get by themselves, on a board that has a solution. With singles, pointing, claiming and subsets the end does
/// not depend on the order of steps: a step never takes a deduction away but that its result comes about by another.
/// </summary>
public static class Fixpoint
{
    /// <summary>The board on which none of the rules finds anything more.</summary>
    /// <param name="board">Where to start.</param>
    /// <param name="rules">The rules; those at the front are tried again after each success, so put the cheapest there.</param>
    /// <exception cref="ArgumentException">The board has no solution, and a rule placed one digit twice in a house.</exception>
    public static Board Of(Board board, IReadOnlyList<IRule> rules)
    {
        ArgumentNullException.ThrowIfNull(board);
        ArgumentNullException.ThrowIfNull(rules);
        var rule = 0;
        while (rule < rules.Count)
        {
            var found = new Findings();
            rules[rule].Find(board, found);
            rule = found.Count == 0 ? rule + 1 : 0;
            board = board.Apply(found);
        }

        return board;
    }
}
