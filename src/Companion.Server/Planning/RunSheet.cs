using System.Collections.Immutable;
using Companion.Engine;
using Companion.Engine.Planning;
using Companion.Engine.Planning.Talking;
using Companion.Engine.Proofs;

namespace Companion.Server.Planning;

/// <summary>A planned route as a presenter reads it, and as <c>route --json</c> writes it.</summary>
/// <param name="Grid">Where it starts, 81 characters.</param>
/// <param name="IsComplete">Whether it leads to the full grid.</param>
/// <param name="Seconds">How long it takes to say all of it.</param>
/// <param name="Passages">The passages in order.</param>
/// <param name="Steps">The steps in order.</param>
/// <param name="Featured">Where each featured rule has its turn.</param>
/// <param name="TalkingPoints">What is worth saying, the rarest first.</param>
public sealed record RunSheet(
    string Grid,
    bool IsComplete,
    double Seconds,
    ImmutableArray<RunSheet.PassageLine> Passages,
    ImmutableArray<RunSheet.StepLine> Steps,
    ImmutableArray<RunSheet.FeaturedLine> Featured,
    ImmutableArray<RunSheet.PointLine> TalkingPoints)
{
    /// <summary>The sheet of a route.</summary>
    /// <param name="plan">The route.</param>
    /// <param name="wording">The words.</param>
    /// <param name="rate">How fast the presenter speaks.</param>
    /// <param name="rarity">How often remarks are true.</param>
    internal static RunSheet Of(RunPlan plan, Wording wording, SpeakingRate rate, Rarity rarity)
    {
        var (steps, at) = (ImmutableArray.CreateBuilder<StepLine>(plan.Steps.Length), 0.0);
        foreach (var step in plan.Steps)
        {
            var line = StepLine.Of(step, steps.Count + 1, at, wording, rate);
            steps.Add(line);
            at += line.Seconds;
        }

        return new(
            plan.Start.ToString(),
            plan.IsComplete,
            Math.Round(at, 1),
            [.. Passage.Of(plan.Steps).Select(passage => PassageLine.Of(passage, steps, wording))],
            steps.ToImmutable(),
            [.. plan.Turns.Select(turn => FeaturedLine.Of(turn, wording))],
            [.. rarity.Rank(Engine.Planning.Talking.TalkingPoints.Of(plan)).Select(point =>
                new PointLine(
                    point.Step + 1, rarity.OneIn(point), PointText.Of(point, wording, rarity), PointFacts.Of(point, plan, rarity)))]);
    }

    /// <summary>A talking point.</summary>
    /// <param name="Step">The number of the step that it is about; null where it is about the whole route.</param>
    /// <param name="OneIn">One in how many puzzles such a remark is true; null for what can be said of every route.</param>
    /// <param name="Text">The remark.</param>
    /// <param name="Facts">What it rests on.</param>
    public sealed record PointLine(int? Step, double? OneIn, string Text, PointFacts Facts);

    /// <summary>A passage.</summary>
    /// <param name="Title">What it is about.</param>
    /// <param name="First">The number of its first step, from 1 on.</param>
    /// <param name="Last">The number of its last step.</param>
    /// <param name="At">When it begins, in seconds of speaking.</param>
    /// <param name="Seconds">How long it takes to say.</param>
    public sealed record PassageLine(string Title, int First, int Last, double At, double Seconds)
    {
        /// <summary>The line of a passage.</summary>
        internal static PassageLine Of(Passage passage, IReadOnlyList<StepLine> steps, Wording wording)
        {
            var (first, last) = (steps[passage.First], steps[passage.First + passage.Count - 1]);
            return new(
                PassageTitle.Of(passage, wording), first.Number, last.Number, first.At, Math.Round(last.At + last.Seconds - first.At, 1));
        }
    }

    /// <summary>A step.</summary>
    /// <param name="Number">Its number, from 1 on.</param>
    /// <param name="At">When it begins, in seconds of speaking.</param>
    /// <param name="Seconds">How long it takes to say.</param>
    /// <param name="Rule">Its rule.</param>
    /// <param name="Name">What the rule is called.</param>
    /// <param name="Places">The digits that follow.</param>
    /// <param name="Removes">The candidates that go.</param>
    /// <param name="IsGate">Whether there is no other way on without a harder rule, and more than full houses is left.</param>
    /// <param name="IsFeatured">Whether it is the turn of a featured rule.</param>
    /// <param name="Short">The step as a caption.</param>
    /// <param name="Text">The step as it may be said.</param>
    public sealed record StepLine(
        int Number,
        double At,
        double Seconds,
        RuleId Rule,
        string Name,
        CandidateSet Places,
        CandidateSet Removes,
        bool IsGate,
        bool IsFeatured,
        string Short,
        string Text)
    {
        /// <summary>The line of a step.</summary>
        internal static StepLine Of(PlannedStep step, int number, double at, Wording wording, SpeakingRate rate)
        {
            var words = wording.HintsFor(step.Board, step.Deduction).Why.Words;
            return new(
                number,
                Math.Round(at, 1),
                Math.Round(words.TimeToSay(rate).TotalSeconds, 1),
                step.Deduction.Rule,
                wording.NameOf(step.Deduction.Rule),
                step.Deduction.Places,
                step.Deduction.Removes,
                step.IsGate,
                step.IsFeatured,
                words.Written,
                words.Spoken);
        }
    }

    /// <summary>Where a featured rule has its turn.</summary>
    /// <param name="Rule">The rule.</param>
    /// <param name="Name">What it is called.</param>
    /// <param name="Step">The number of the step that shows it; null where it is open nowhere on the route.</param>
    /// <param name="Others">What of it could be shown instead.</param>
    public sealed record FeaturedLine(RuleId Rule, string Name, int? Step, ImmutableArray<OtherLine> Others)
    {
        /// <summary>The line of a featured rule.</summary>
        internal static FeaturedLine Of(FeaturedTurn turn, Wording wording) => new(
            turn.Feature.Rule,
            wording.NameOf(turn.Feature.Rule),
            turn.Step + 1,
            [.. turn.Others.Select(other => new OtherLine(
                [.. other.Deduction.PatternCells], other.Deduction.Places, other.Deduction.Removes, other.First + 1, other.Last + 1))]);
    }

    /// <summary>Another deduction of a featured rule that is open on the way.</summary>
    /// <param name="Cells">Its pattern.</param>
    /// <param name="Places">The digits that follow, as it is open first.</param>
    /// <param name="Removes">The candidates that go then.</param>
    /// <param name="FromStep">The number of the first step before which it is open.</param>
    /// <param name="ToStep">The number of the last such step.</param>
    public sealed record OtherLine(ImmutableArray<Cell> Cells, CandidateSet Places, CandidateSet Removes, int FromStep, int ToStep);
}
