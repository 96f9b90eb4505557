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
internal sealed record VetResult(
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
    public static VetResult Of(Vetting vetting, Wording wording) => new(
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

    /// <summary>A rule on the way, with its cost and in how many rounds it is the easiest that finds anything.</summary>
    internal sealed record RuleUse(RuleId Rule, string Name, int Cost, int Rounds);

    /// <summary>
    /// Whether a featured rule is needed, see <see cref="RuleNeed"/>, with the board on which it is first open and the rules that
    /// lead round it, hardest first.
    /// </summary>
    internal sealed record FeaturedRule(RuleId Rule, string Name, Need Need, string? Board, ImmutableArray<RuleId> Instead)
    {
        /// <summary>The need as it is sent.</summary>
        public static FeaturedRule Of(RuleNeed need, Wording wording) => new(
            need.Rule, wording.NameOf(need.Rule), need.Need, need.Board?.ToString(), [.. need.Instead.Select(rung => rung.Rule.Id)]);
    }

    /// <summary>A change of one cell; null for an empty cell.</summary>
    internal sealed record Correction(Cell Cell, Digit? From, Digit? To)
    {
        /// <summary>The correction as it is sent.</summary>
        public static Correction Of(Engine.Search.Correction correction) => new(correction.Cell, correction.From, correction.To);
    }
}
