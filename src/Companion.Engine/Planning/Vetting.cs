using System.Collections.Immutable;
using Companion.Engine.Proofs;
using Companion.Engine.Rules;
using Companion.Engine.Search;

namespace Companion.Engine.Planning;

/// <summary>What a presenter must know of a puzzle before the show: is it sound, how hard is it, and will it show what it is to show.</summary>
/// <param name="Draft">The grid as it came.</param>
/// <param name="Faults">Why it is no puzzle; empty where it is one.</param>
/// <param name="Solutions">0, 1, or 2 for more than one.</param>
/// <param name="Puzzle">The puzzle; null unless there is exactly one solution.</param>
/// <param name="Givens">The cells with a digit; empty where the text is no grid.</param>
/// <param name="Redundant">
/// Givens that follow from the others, each by itself; empty where the puzzle is minimal, and where it is none.
/// </param>
/// <param name="Symmetries">The turns and mirrors that leave the givens in the same cells.</param>
/// <param name="Route">The way through it by rounds; null unless there is exactly one solution.</param>
/// <param name="Needs">For each featured rule, in the order asked, whether it is needed.</param>
/// <param name="Corrections">Where there is not exactly one solution: the changes of one cell that make it so, likeliest first.</param>
public sealed record Vetting(
    GridDraft Draft,
    ImmutableArray<BoardFault> Faults,
    int Solutions,
    Puzzle? Puzzle,
    CellSet Givens,
    CellSet Redundant,
    ImmutableArray<GridSymmetry> Symmetries,
    Route? Route,
    ImmutableArray<RuleNeed> Needs,
    ImmutableArray<Correction> Corrections)
{
    /// <summary>How hard it is; null unless there is exactly one solution.</summary>
    public PuzzleGrade? Grade => Route is null ? null : PuzzleGrade.Of(Route);

    /// <summary>Vets a grid.</summary>
    /// <param name="draft">The grid.</param>
    /// <param name="ladder">The rules; those that assume one solution are only used where there is one.</param>
    /// <param name="featured">The rules that the puzzle is to show; each is on the ladder.</param>
    /// <param name="cancel">Stops it.</param>
    /// <exception cref="ArgumentException">A featured rule is not on the ladder.</exception>
    /// <exception cref="OperationCanceledException"><paramref name="cancel"/> was signalled.</exception>
    public static Vetting Of(GridDraft draft, Ladder ladder, IEnumerable<RuleId> featured, CancellationToken cancel = default) =>
        Of(draft, ladder, featured, cores: 1, cancel);

    /// <summary>Vets a grid.</summary>
    /// <param name="draft">The grid.</param>
    /// <param name="ladder">The rules; those that assume one solution are only used where there is one.</param>
    /// <param name="featured">The rules that the puzzle is to show; each is on the ladder.</param>
    /// <param name="cores">How many cores the last resorts may take, one or two; what is found is the same.</param>
    /// <param name="cancel">Stops it.</param>
    /// <exception cref="ArgumentException">A featured rule is not on the ladder.</exception>
    /// <exception cref="OperationCanceledException"><paramref name="cancel"/> was signalled.</exception>
    public static Vetting Of(GridDraft draft, Ladder ladder, IEnumerable<RuleId> featured, int cores, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(featured);
        var reading = Puzzle.Read(draft);
        if (reading.Value is not { } puzzle)
            return Faulty(draft, reading.Faults, cancel);
        var route = Route.From(puzzle.Board, ladder, cores, cancel);
        return new(
            draft,
            [],
            1,
            puzzle,
            puzzle.Board.Givens,
            Minimality.RedundantGivens(puzzle),
            GridSymmetries.Of(puzzle.Board.Givens),
            route,
            [.. featured.Select(rule => RuleNeed.Of(route, rule, cancel))],
            []);
    }

    private static Vetting Faulty(GridDraft draft, ImmutableArray<BoardFault> faults, CancellationToken cancel)
    {
        var givens = Board.Read(draft).Value?.Filled ?? CellSet.Empty;
        return new(
            draft,
            faults,
            faults.Any(fault => fault is BoardFault.SeveralSolutions) ? 2 : 0,
            null,
            givens,
            CellSet.Empty,
            givens.IsEmpty ? [] : GridSymmetries.Of(givens),
            null,
            [],
            Correction.Of(draft, cancel));
    }
}
