using System.Collections.Immutable;
using Companion.Engine.Proofs;
using Companion.Engine.Rules;

namespace Companion.Engine.Planning;

/// <summary>
/// The way through a puzzle by rounds: each carries out, together, all that the easiest rule which finds anything finds. So it does
/// not depend on which of several deductions is taken first.
/// </summary>
/// <param name="Ladder">The rules that it was found with.</param>
/// <param name="Rounds">The rounds in order.</param>
/// <param name="End">The board after the last round: full, or one on which no rule finds anything.</param>
public sealed record Route(Ladder Ladder, ImmutableArray<Round> Rounds, Board End)
{
    // How many cores it was found with.
    private int Cores { get; init; } = 1;

    /// <summary>Whether the route leads to the full grid.</summary>
    public bool IsComplete => End.IsFull;

    /// <summary>The hardest rung that is needed on the way; null where none is.</summary>
    public Rung? Hardest => Rungs.FirstOrDefault();

    /// <summary>The rungs that are needed on the way, each once, hardest first.</summary>
    public ImmutableArray<Rung> Rungs => [.. Rounds.Select(round => round.Rung).Distinct().OrderByDescending(rung => rung.Place)];

    /// <summary>Finds the route.</summary>
    /// <param name="start">Where to start; it has a solution.</param>
    /// <param name="ladder">The rules.</param>
    /// <param name="cancel">Stops within a round.</param>
    /// <exception cref="OperationCanceledException"><paramref name="cancel"/> was signalled.</exception>
    public static Route From(Board start, Ladder ladder, CancellationToken cancel = default) => From(start, ladder, cores: 1, cancel);

    /// <summary>Finds the route.</summary>
    /// <param name="start">Where to start; it has a solution.</param>
    /// <param name="ladder">The rules.</param>
    /// <param name="cores">How many cores the last resorts may take, one or two; the route is the same.</param>
    /// <param name="cancel">Stops within a round.</param>
    /// <exception cref="OperationCanceledException"><paramref name="cancel"/> was signalled.</exception>
    public static Route From(Board start, Ladder ladder, int cores, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(start);
        ArgumentNullException.ThrowIfNull(ladder);
        return From(start, ladder, _ => null, cores, cancel);
    }

    /// <summary>
    /// The route from one of its boards, or from another of the same puzzle, without a rule. What it has in common with this one is
    /// not looked for again: easier rules take away what it takes away and more, so that the two soon meet.
    /// </summary>
    /// <param name="start">Where to start.</param>
    /// <param name="rule">The rule to do without.</param>
    /// <param name="cancel">Stops within a round.</param>
    /// <exception cref="OperationCanceledException"><paramref name="cancel"/> was signalled.</exception>
    internal Route Without(Board start, RuleId rule, CancellationToken cancel) => From(
        start,
        Ladder.Without(rule),
        board => Rounds.FirstOrDefault(round => round.Rung.Rule.Id != rule && round.Board.Filled == board.Filled && round.Board.Candidates == board.Candidates),
        Cores,
        cancel);

    /// <summary>The rounds from a board on, each looked for when it is asked for.</summary>
    internal static IEnumerable<Round> RoundsFrom(Board start, Ladder ladder, CancellationToken cancel) =>
        RoundsFrom(start, ladder, _ => null, cores: 1, cancel);

    private static Route From(Board start, Ladder ladder, Func<Board, Round?> known, int cores, CancellationToken cancel)
    {
        ImmutableArray<Round> rounds = [.. RoundsFrom(start, ladder, known, cores, cancel)];
        return new(ladder, rounds, rounds is [.., var last] ? last.Board.Apply(last.Open) : start) { Cores = cores };
    }

    private static IEnumerable<Round> RoundsFrom(
        Board start, Ladder ladder, Func<Board, Round?> known, int cores, CancellationToken cancel)
    {
        for (var board = start; (known(board) ?? Next(board, ladder, cores, cancel)) is { } round; board = board.Apply(round.Open))
            yield return round;
    }

    private static Round? Next(Board board, Ladder ladder, int cores, CancellationToken cancel)
    {
        foreach (var rung in ladder.Rungs)
        {
            var found = new Findings(int.MaxValue, cancel) { Cores = cores };
            rung.Rule.Find(board, found);
            cancel.ThrowIfCancellationRequested();
            if (found.Count > 0)
                return new(board, rung, [.. found]);
        }

        return null;
    }
}
