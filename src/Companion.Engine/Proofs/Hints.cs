namespace Companion.Engine.Proofs;

/// <summary>The four hints that one deduction gives, one for each grade. <see cref="Wording.HintsFor"/> makes them.</summary>
/// <param name="Where">Grade 1.</param>
/// <param name="What">Grade 2.</param>
/// <param name="Which">Grade 3.</param>
/// <param name="Why">Grade 4.</param>
public sealed record Hints(WhereHint Where, WhatHint What, WhichHint Which, WhyHint Why)
{
    /// <summary>The hint of this grade.</summary>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="grade"/> is none of the four.</exception>
    public Hint this[Grade grade] => grade switch
    {
        Grade.Where => Where,
        Grade.What => What,
        Grade.Which => Which,
        Grade.Why => Why,
        _ => throw new ArgumentOutOfRangeException(nameof(grade), grade, "A grade is 1 to 4."),
    };
}
