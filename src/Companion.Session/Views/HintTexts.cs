using Companion.Engine.Proofs;

namespace Companion.Session.Views;

/// <summary>The words of the four grades of a deduction, for the presenter to read before they go on air.</summary>
/// <param name="Where">Grade 1.</param>
/// <param name="What">Grade 2.</param>
/// <param name="Which">Grade 3.</param>
/// <param name="Why">Grade 4.</param>
public sealed record HintTexts(string Where, string What, string Which, string Why)
{
    /// <summary>The words of four hints as they are spoken.</summary>
    public static HintTexts Of(Hints hints)
    {
        ArgumentNullException.ThrowIfNull(hints);
        return new(hints.Where.Words.Spoken, hints.What.Words.Spoken, hints.Which.Words.Spoken, hints.Why.Words.Spoken);
    }
}
