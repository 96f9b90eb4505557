using System.Collections.Immutable;
using Companion.Engine;
using Companion.Engine.Planning;
using Companion.Engine.Proofs;
using Companion.Engine.Rules;
using Companion.Session.Boards;
using Companion.Session.Events;
using Companion.Session.Shows;
using Companion.Session.State;

namespace Companion.Session.AfterShow.Recaps;

/// <summary>What was told of a puzzle: deductions that were put on air or counted as used, each once, on the board as it was known then.</summary>
internal static class ToldSteps
{
    /// <summary>The steps in order, each with when it was first told and whether it ever was on air.</summary>
    internal static ImmutableArray<(TimeSpan At, PlannedStep Step, bool WasOnAir)> Of(StoredShow show, ImmutableArray<Moment> moments, Ladder ladder)
    {
        var steps = ImmutableArray.CreateBuilder<(TimeSpan, PlannedStep, bool)>();
        var (seen, before) = (new Dictionary<Deduction, int>(), SessionState.Initial);
        for (var index = 0; index < moments.Length; index++)
        {
            var moment = moments[index];
            var chosen = moment.Happened switch
            {
                PutOnAir => moment.State.OnAir?.Chosen,
                DeductionUsed used => Chosen.In(before, used.Deduction),
                _ => null,
            };
            before = moment.State;

            // A rule of a newer or older ladder has no place among the others.
            if (chosen is null || !ladder.Has(chosen.Deduction.Rule))
                continue;
            if (!seen.TryAdd(chosen.Deduction, steps.Count))
            {
                var place = seen[chosen.Deduction];
                steps[place] = steps[place] with { Item3 = steps[place].Item3 || moment.Happened is PutOnAir };
                continue;
            }

            if (BoardOf(chosen, moments.AsSpan(0, index)) is not { } board)
            {
                seen.Remove(chosen.Deduction);
                continue;
            }

            var isFeatured = moment.State.Plan.Featured.Any(feature => feature.Rule == chosen.Deduction.Rule);
            steps.Add((VideoTime.Near(show, moment), new(board, ladder[chosen.Deduction.Rule], chosen.Deduction, isFeatured) { Ways = 0 }, moment.Happened is PutOnAir));
        }

        return steps.ToImmutable();
    }

    // Who enters a digit and only then says why is told about the board before the entry.
    private static Board? BoardOf(Chosen chosen, ReadOnlySpan<Moment> before)
    {
        if (Stands(chosen.Board))
            return chosen.Board;
        for (var index = before.Length - 1; index >= 0; index--)
        {
            if (KnownBoard.Of(before[index].State).Value is { } board && Stands(board))
                return board;
        }

        return null;

        bool Stands(Board board) => board.Candidates.ContainsAll(chosen.Deduction.Places);
    }
}
