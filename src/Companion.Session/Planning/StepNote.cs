using Companion.Engine;

namespace Companion.Session.Planning;

/// <summary>
/// What somebody wants to say at a step of the run sheet. It is kept by what the step concludes, so that it is found again when the way
/// is planned anew.
/// </summary>
/// <param name="Places">The digits that the step places.</param>
/// <param name="Removes">The candidates that it takes out.</param>
/// <param name="Text">The words, one line, not empty.</param>
public sealed record StepNote(CandidateSet Places, CandidateSet Removes, string Text)
{
    /// <summary>The longest text, in characters.</summary>
    public const int LongestText = 400;

    /// <summary>
    /// Whether it belongs to a step: one that concludes the same, or what is left of it since some candidates went another way.
    /// </summary>
    /// <param name="places">The digits that the step places.</param>
    /// <param name="removes">The candidates that it takes out.</param>
    public bool IsOf(in CandidateSet places, in CandidateSet removes) =>
        Places == places && (Removes == removes || (!removes.IsEmpty && Removes.ContainsAll(removes)));
}
