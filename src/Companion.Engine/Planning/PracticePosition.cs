using System.Collections.Immutable;
using Companion.Engine.Proofs;
using Companion.Engine.Rules;

namespace Companion.Engine.Planning;

/// <summary>
/// A position to practise a rule on: the rule is open there and nothing easier is, so that it is what makes progress. Where positions
/// come from does not matter: from a puzzle on its way (<see cref="Along"/>), or from any board (<see cref="On"/>), such as one of a show.
/// </summary>
/// <param name="Board">The board.</param>
/// <param name="Answer">The instance of the rule to be found: of those that are proved, the one from which most follows.</param>
/// <param name="Others">How many more instances of the rule are open there; null where the rule does not look for all.</param>
public sealed record PracticePosition(Board Board, Deduction Answer, int? Others)
{
    /// <summary>Where it comes from, as in "line 3"; empty where nobody needs to know.</summary>
    public string Source { get; init; } = "";

    /// <summary>The candidates that are gone beyond what the digits take out: what earlier steps removed.</summary>
    public CandidateSet Gone => Board.Parse(BoardText.Write(Board)).Candidates - Board.Candidates;

    /// <summary>A board as a position.</summary>
    /// <param name="board">The board; its puzzle has one solution.</param>
    /// <param name="ladder">The rules, the one in question among them.</param>
    /// <param name="rule">The rule in question.</param>
    /// <param name="cancel">Stops it.</param>
    /// <returns>The position, or null where the rule is not open, or something easier is.</returns>
    /// <exception cref="ArgumentException">The rule is not on the ladder.</exception>
    /// <exception cref="OperationCanceledException"><paramref name="cancel"/> was signalled.</exception>
    public static PracticePosition? On(Board board, Ladder ladder, RuleId rule, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(board);
        ArgumentNullException.ThrowIfNull(ladder);
        return Route.RoundsFrom(board, ladder.UpTo(rule), cancel).Take(1).Select(round => Of(round, rule)).FirstOrDefault();
    }

    /// <summary>The positions that a puzzle comes by, as far as the rule and easier ones lead; each is looked for when it is asked for.</summary>
    /// <param name="start">The puzzle's start, or any position of it; it has one solution.</param>
    /// <param name="ladder">The rules, the one in question among them.</param>
    /// <param name="rule">The rule in question.</param>
    /// <param name="cancel">Stops it.</param>
    /// <exception cref="ArgumentException">The rule is not on the ladder.</exception>
    /// <exception cref="OperationCanceledException"><paramref name="cancel"/> was signalled.</exception>
    public static IEnumerable<PracticePosition> Along(Board start, Ladder ladder, RuleId rule, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(start);
        ArgumentNullException.ThrowIfNull(ladder);
        return Route.RoundsFrom(start, ladder.UpTo(rule), cancel).Select(round => Of(round, rule)).OfType<PracticePosition>();
    }

    /// <summary>
    /// Chooses among the positions of several puzzles: of each its first one, and only where these are too few, later ones with
    /// another pattern.
    /// </summary>
    /// <param name="puzzles">For each puzzle its positions in order; those of equal boards count once.</param>
    /// <param name="count">How many are wanted.</param>
    /// <returns>As many as are wanted, or fewer where there are no more.</returns>
    public static ImmutableArray<PracticePosition> Choose(IEnumerable<IEnumerable<PracticePosition>> puzzles, int count)
    {
        ArgumentNullException.ThrowIfNull(puzzles);
        var (chosen, boards, rest) = (new List<PracticePosition>(), new HashSet<string>(), new List<IEnumerable<PracticePosition>>());
        foreach (var positions in puzzles)
        {
            if (chosen.Count == count)
                break;
            if (positions.FirstOrDefault() is not { } first || !boards.Add(first.Board.ToString()))
                continue;
            chosen.Add(first);
            rest.Add(positions.Where(later => later.Answer.PatternCells != first.Answer.PatternCells)
                .DistinctBy(later => later.Answer.PatternCells));
        }

        chosen.AddRange(rest.SelectMany(positions => positions).Take(count - chosen.Count));
        return [.. chosen];
    }

    private static PracticePosition? Of(Round round, RuleId rule)
    {
        if (round.Rung.Rule.Id != rule)
            return null;
        var answer = round.Open.OrderByDescending(open => (open.Places | open.Removes).Count).FirstOrDefault(open => ProofChecker.Holds(round.Board, open));
        return answer is null ? null : new(round.Board, answer, round.Rung.Rule.Effort == Effort.LastResort ? null : round.Open.Length - 1);
    }
}
