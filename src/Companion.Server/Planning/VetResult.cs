using System.Collections.Immutable;
using Companion.Engine;
using Companion.Engine.Planning;
using Companion.Engine.Proofs;

namespace Companion.Server.Planning;

/// <summary>What vetting a puzzle finds out, as the panel and <c>vet --json</c> get it.</summary>
/// <param name="Puzzle">The grid, 81 characters where it is one.</param>
/// <param name="Solutions">0, 1, or 2 for more than one.</param>
/// <param name="Clues">How many cells have a digit.</param>
/// <param name="Redundant">Givens that follow from the others, each by itself; null unless there is exactly one solution.</param>
/// <param name="Symmetries">The turns and mirrors under which the givens stay in the same cells.</param>
/// <param name="Hardest">The hardest rule needed; null where none is, or the ladder does not lead to the solution.</param>
/// <param name="Grade">How hard it is; null unless there is exactly one solution.</param>
/// <param name="Rules">The rules needed, hardest first.</param>
/// <param name="Featured">For each featured rule, in the order asked, whether it is needed.</param>
/// <param name="Corrections">Where there is not one solution: the changes of one cell that make it so, likeliest first.</param>
/// <param name="Faults">Why it is no puzzle, a sentence each.</param>
/// <param name="Sentences">All of this in words.</param>
public sealed record VetResult(
    string Puzzle,
    int Solutions,
    int Clues,
    ImmutableArray<Cell>? Redundant,
    ImmutableArray<GridSymmetry> Symmetries,
    RuleId? Hardest,
    GradeFigures? Grade,
    ImmutableArray<VetResult.RuleUse> Rules,
    ImmutableArray<VetResult.FeaturedRule> Featured,
    ImmutableArray<VetResult.Correction> Corrections,
    ImmutableArray<string> Faults,
    ImmutableArray<string> Sentences)
{
    /// <summary>The result of a vetting.</summary>
    /// <param name="vetting">The vetting.</param>
    /// <param name="wording">The words.</param>
    internal static VetResult Of(Vetting vetting, Wording wording) => new(
        vetting.Draft.Text,
        vetting.Solutions,
        vetting.Givens.Count,
        vetting.Puzzle is null ? null : [.. vetting.Redundant],
        vetting.Symmetries,
        vetting.Grade?.Hardest?.Rule.Id,
        vetting.Grade is { } grade ? GradeFigures.Of(grade) : null,
        [.. RulesOf(vetting, wording)],
        [.. vetting.Needs.Select(need => FeaturedRule.Of(need, wording))],
        [.. vetting.Corrections.Select(Correction.Of)],
        [.. vetting.Faults.Select(fault => fault.Sentence)],
        [.. VetSentences.Of(vetting, wording)]);

    private static IEnumerable<RuleUse> RulesOf(Vetting vetting, Wording wording) =>
        vetting.Route is not { } route
            ? []
            : route.Rungs.Select(rung => new RuleUse(
                rung.Rule.Id, wording.NameOf(rung.Rule.Id), rung.Cost, route.Rounds.Count(round => round.Rung == rung)));

    /// <summary>A rule on the way.</summary>
    /// <param name="Rule">The rule.</param>
    /// <param name="Name">What it is called.</param>
    /// <param name="Cost">Its cost.</param>
    /// <param name="Rounds">In how many rounds it is the easiest that finds anything.</param>
    public sealed record RuleUse(RuleId Rule, string Name, int Cost, int Rounds);

    /// <summary>Whether a featured rule is needed; see <see cref="RuleNeed"/>.</summary>
    /// <param name="Rule">The rule.</param>
    /// <param name="Name">What it is called.</param>
    /// <param name="Need">Whether it is needed.</param>
    /// <param name="Board">The board on which it is first open, 81 characters, or null.</param>
    /// <param name="Instead">The rules that lead round it, hardest first.</param>
    public sealed record FeaturedRule(RuleId Rule, string Name, Need Need, string? Board, ImmutableArray<RuleId> Instead)
    {
        internal static FeaturedRule Of(RuleNeed need, Wording wording) => new(
            need.Rule, wording.NameOf(need.Rule), need.Need, need.Board?.ToString(), [.. need.Instead.Select(rung => rung.Rule.Id)]);
    }

    /// <summary>A change of one cell.</summary>
    /// <param name="Cell">The cell.</param>
    /// <param name="From">Its digit as typed; null for an empty cell.</param>
    /// <param name="To">Its digit once corrected; null for an empty cell.</param>
    public sealed record Correction(Cell Cell, Digit? From, Digit? To)
    {
        internal static Correction Of(Engine.Search.Correction correction) => new(correction.Cell, correction.From, correction.To);
    }
}
