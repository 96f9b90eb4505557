using System.Collections.Immutable;
using Companion.Engine;

namespace Companion.Sight.Reading;

/// <summary>What a sign was read as among what stands around it, which may be more than its own ink tells.</summary>
/// <param name="Odds">How likely each digit is, from 0 to 1, by its index; what is left is for no digit. The default where nobody looked.</param>
/// <param name="Line">How likely a line goes through it, if it is a digit.</param>
/// <param name="Cover">How likely something covers much of it, if it is a digit.</param>
internal readonly record struct SignReading(ImmutableArray<float> Odds, float Line, float Cover)
{
    // How much this counts, and the other for the rest: of a few weights the one that left the fewest digits and marks of boards wrong.
    private const float Weight = 0.45f;

    // Nothing is so unlikely that the other network could not be right.
    private const float Least = 1e-3f;

    // From here on what is covered may have made another digit of it.
    private const float Covered = 0.3f;

    /// <summary>What both networks say together: each likely for the one as far as it is for the other.</summary>
    /// <param name="alone">What was read of the sign's own ink.</param>
    public GlyphReading With(GlyphReading alone)
    {
        // What the presenter taught stays what it is.
        if (Odds.IsDefault || alone.Odds.IsDefault)
            return alone;
        var (own, around) = (WithNone(alone.Odds), WithNone(Odds));
        float[] together = [.. own.Zip(around, (one, other) => MathF.Pow(one, 1 - Weight) * MathF.Pow(other, Weight))];
        var sum = together.Sum();
        float[] ranked = [.. together.OrderDescending()];
        float[] before = [.. own.OrderDescending()];
        var surest = Array.IndexOf(together, ranked[0]);
        // What made it less sure than its odds still does.
        var faith = Math.Min(1, alone.Certainty / Math.Max(Least, before[0] - before[1]));
        var certainty = faith * (ranked[0] - ranked[1]) / sum;
        return new(
            surest < Digit.Count ? Digit.Of(surest + 1) : null,
            surest < Digit.Count && Cover >= Covered ? Math.Min(certainty, Siblings.Doubted) : certainty)
        { Odds = [.. together.Take(Digit.Count).Select(part => part / sum)] };
    }

    private static float[] WithNone(ImmutableArray<float> odds) =>
        [.. odds.Select(part => Math.Max(Least, part)), Math.Max(Least, 1 - odds.Sum())];
}
