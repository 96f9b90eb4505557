using System.Collections.Immutable;
using Companion.Engine;
using Companion.Engine.Proofs;
using Companion.Session.Boards;

namespace Companion.Session.Views;

/// <summary>One open deduction, as the area Next lists it.</summary>
/// <param name="Id">Its one-line text, by which commands name it.</param>
/// <param name="Rule">The rule.</param>
/// <param name="Name">The rule's spoken name.</param>
/// <param name="Short">The deduction in short written form.</param>
/// <param name="Sentence">The full sentence as it can be spoken.</param>
/// <param name="Seconds">How long the sentence takes to say, in seconds.</param>
/// <param name="Cells">Pattern cells with roles.</param>
/// <param name="Digits">Digits of the pattern.</param>
/// <param name="Places">What it places.</param>
/// <param name="Removes">What it removes.</param>
/// <param name="Unseen">Candidates it rests on that no viewer can see to be gone.</param>
/// <param name="First">
/// The deduction, shown or used before, that took the unseen candidates out; null where none is unseen.
/// </param>
/// <param name="FirstName">That deduction for people: its rule's spoken name and its cells; null where none is unseen.</param>
/// <param name="Since">Number of entries made since it came open.</param>
/// <param name="AssumesOneSolution">Whether it rests on the puzzle having a single solution.</param>
public sealed record OpenDeduction(
    string Id,
    RuleId Rule,
    string Name,
    string Short,
    string Sentence,
    double Seconds,
    ImmutableArray<PatternCell> Cells,
    DigitSet Digits,
    CandidateSet Places,
    CandidateSet Removes,
    CandidateSet Unseen,
    string? First,
    string? FirstName,
    int Since,
    bool AssumesOneSolution)
{
    /// <summary>A deduction as it is listed.</summary>
    /// <param name="deduction">The deduction.</param>
    /// <param name="hints">Its hints.</param>
    /// <param name="support">What of its support viewers cannot see.</param>
    /// <param name="since">Number of entries made since it came open.</param>
    /// <param name="voice">The words.</param>
    internal static OpenDeduction Of(Deduction deduction, Hints hints, Support support, int since, Voice voice) => new(
        deduction.ToString(),
        deduction.Rule,
        hints.What.Name,
        hints.Why.Words.Written,
        hints.Why.Words.Spoken,
        hints.Why.Words.TimeToSay(voice.Rate).TotalSeconds,
        deduction.Cells,
        deduction.Digits,
        deduction.Places,
        deduction.Removes,
        support.Unseen,
        support.First?.ToString(),
        support.First is { } first ? $"{voice.Wording.NameOf(first.Rule)} {string.Join(' ', first.PatternCells)}" : null,
        since,
        deduction.AssumesOneSolution);
}
