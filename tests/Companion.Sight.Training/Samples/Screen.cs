namespace Companion.Sight.Samples;

/// <summary>Draws the digits of one screen: all in one face and at one size, each on its own ground and with its own faults.</summary>
internal static class Screen
{
    /// <summary>Draws each digit some times.</summary>
    /// <param name="random">What is left to the lot.</param>
    /// <param name="families">The families to choose from.</param>
    /// <param name="range">How high the digits are.</param>
    /// <param name="times">How often each digit is drawn.</param>
    public static IReadOnlyList<GlyphSample> Draw(Random random, IReadOnlyList<FontFamily> families, SampleRange range, int times)
    {
        var height = random.BetweenByRatio(range.From, range.To);
        var lettering = Lettering.Pick(random, families, height);
        return [.. Enumerable.Range(0, 9 * times).Select(index => SampleDrawing.Cut(random, lettering.Digit(index % 9), height))];
    }
}
