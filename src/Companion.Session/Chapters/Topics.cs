using System.Collections.Immutable;
using Companion.Engine;
using Companion.Engine.Planning;
using Companion.Engine.Proofs;
using Companion.Engine.Rules;
using Companion.Session.Events;
using Companion.Session.Shows;

namespace Companion.Session.Chapters;

/// <summary>
/// Tells from a stored show what it was about: from what was put on air or used, and from the proofs of entries, each at the time of the
/// entry and not at that of its proof, which comes late. Pure.
/// </summary>
public static class Topics
{
    /// <summary>The topics of a show, in order; the first is its beginning.</summary>
    /// <param name="show">The show.</param>
    /// <param name="ladder">The rules with their costs; a rule that it does not have is the dearest.</param>
    public static ImmutableArray<Topic> Of(StoredShow show, Ladder ladder)
    {
        ArgumentNullException.ThrowIfNull(show);
        ArgumentNullException.ThrowIfNull(ladder);
        var topics = ImmutableArray.CreateBuilder<Topic>();
        topics.Add(new Topic.Beginning(TimeSpan.Zero));
        var told = new List<(TimeSpan At, ToldStep Step)>();
        // What a pattern removes may be entered bit by bit, each with a proof of its own by what is left of it.
        var (proofs, seen, aired) = (ProofsOf(show), new HashSet<(RuleId, CellSet, DigitSet)>(), new HashSet<(RuleId, CellSet, DigitSet)>());
        foreach (var moment in show.Moments)
        {
            var at = show.KeyedTimeOf(moment);
            if (moment.Happened is PuzzleLoaded loaded)
            {
                TellAll();
                topics.Add(new Topic.Loaded(at, loaded.Title));
                seen.Clear();
                aired.Clear();
                continue;
            }

            if (moment.Happened is PutOnAir put)
                aired.Add(put.Deduction.PatternKey);

            if (DeductionOf(moment, proofs) is { } deduction && seen.Add(deduction.PatternKey))
                told.Add((at, new(deduction, moment.State.Plan.Featured.Any(feature => feature.Rule == deduction.Rule))));
            if (moment.Happened is DigitPlaced && IsSolved(moment))
            {
                TellAll();
                topics.Add(new Topic.Solved(at));
            }
        }

        TellAll();
        return topics.ToImmutable();

        void TellAll()
        {
            ImmutableArray<ToldStep> steps = [.. told.Select(each => each.Step)];
            foreach (var passage in Passage.Of(steps))
            {
                ImmutableArray<Deduction> its = [.. steps.Skip(passage.First).Take(passage.Count).Select(step => step.Deduction)];
                topics.Add(new Topic.Told(told[passage.First].At, passage, its, its.Max(step => CostOf(step.Rule))) { WasOnAir = its.Any(step => aired.Contains(step.PatternKey)) });
            }

            told.Clear();
        }

        int CostOf(RuleId rule) => ladder.Has(rule) ? ladder[rule].Cost : Rung.Dearest;
    }

    // The hardest step of an entry's proof is what is talked about; what leads to it goes with it.
    private static Dictionary<int, Deduction> ProofsOf(StoredShow show)
    {
        var proofs = new Dictionary<int, Deduction>();
        foreach (var found in show.Events.OfType<EntryAttributed>())
        {
            if (found.Attribution is Attribution.Proved { Steps: [_, ..] steps } proved)
                proofs.TryAdd(found.Entry, steps.Last(step => step.Rule == proved.Hardest));
        }

        return proofs;
    }

    private static Deduction? DeductionOf(Moment moment, Dictionary<int, Deduction> proofs) => moment.Happened switch
    {
        PutOnAir put => put.Deduction,
        DeductionUsed used => used.Deduction,
        DigitPlaced or CellsErased or BlockMarkChanged or CellMarkChanged or StrikeChanged =>
            proofs.GetValueOrDefault(moment.State.Entries),
        _ => null,
    };

    private static bool IsSolved(Moment moment) =>
        moment.State.Grid is { Puzzle: { Solution: var solution } } grid && CellSet.All.All(cell => grid.DigitAt(cell) == solution[cell]);
}
