using SkiaSharp;

namespace Companion.Sight.Samples;

/// <summary>What is drawn by lot for a sample.</summary>
internal static class RandomExtensions
{
    /// <summary>Evenly from one value to another.</summary>
    public static float Between(this Random random, float from, float to) => from + (to - from) * random.NextSingle();

    /// <summary>Evenly on the scale of the logarithm: as many from 10 to 20 as from 20 to 40.</summary>
    public static float BetweenByRatio(this Random random, float from, float to) => from * MathF.Pow(to / from, random.NextSingle());

    /// <summary>True in so many of all cases, 0 to 1.</summary>
    public static bool Chance(this Random random, double part) => random.NextDouble() < part;

    /// <summary>One of them.</summary>
    public static T Pick<T>(this Random random, IReadOnlyList<T> choices) => choices[random.Next(choices.Count)];

    /// <summary>One or the other sign.</summary>
    public static float Sign(this Random random) => random.Chance(0.5) ? 1 : -1;

    /// <summary>Normally distributed around 0.</summary>
    public static float Normal(this Random random, float deviation) =>
        deviation * MathF.Sqrt(-2 * MathF.Log(1 - random.NextSingle())) * MathF.Cos(MathF.Tau * random.NextSingle());

    /// <summary>A colour that differs from another by so much in each part at most.</summary>
    public static SKColor Near(this Random random, SKColor colour, int most)
    {
        return new(Moved(colour.Red), Moved(colour.Green), Moved(colour.Blue));

        byte Moved(byte value) => (byte)Math.Clamp(value + random.Next(-most, most + 1), 0, 255);
    }
}
