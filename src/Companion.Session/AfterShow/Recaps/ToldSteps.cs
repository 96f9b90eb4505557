using System.Collections.Immutable;
using Companion.Engine.Planning;
using Companion.Engine.Proofs;
using Companion.Engine.Rules;
using Companion.Session.Events;
using Companion.Session.Shows;
using Companion.Session.State;

namespace Companion.Session.AfterShow.Recaps;

/// <summary>What was told of a puzzle: deductions that were put on air or counted as used, each once, on the board as it was known then.</summary>
internal static class ToldSteps
{
    internal static ImmutableArray<(TimeSpan At, PlannedStep Step)> Of(StoredShow show, IEnumerable<Moment> moments, Ladder ladder)
    {
        var steps = ImmutableArray.CreateBuilder<(TimeSpan, PlannedStep)>();
        var (seen, before) = (new HashSet<Deduction>(), SessionState.Initial);
        foreach (var moment in moments)
        {
            var chosen = moment.Happened switch
            {
                PutOnAir => moment.State.OnAir?.Chosen,
                DeductionUsed used => Chosen.In(before, used.Deduction),
                _ => null,
            };
            before = moment.State;

            // A rule of a newer or older ladder has no place among the others.
            if (chosen is null || !ladder.Has(chosen.Deduction.Rule) || !seen.Add(chosen.Deduction))
                continue;
            var isFeatured = moment.State.Plan.Featured.Any(feature => feature.Rule == chosen.Deduction.Rule);
            steps.Add((VideoTime.Near(show, moment), new(chosen.Board, ladder[chosen.Deduction.Rule], chosen.Deduction, isFeatured) { Ways = 0 }));
        }

        return steps.ToImmutable();
    }
}
