namespace Companion.Sight.Samples;

/// <summary>Which samples are drawn.</summary>
/// <param name="From">The least height of a digit, in pixels.</param>
/// <param name="To">The greatest height of a digit, in pixels.</param>
/// <param name="Warped">The part of the digits whose outline is bent, so that it is like no face of the list; for training alone.</param>
internal sealed record SampleRange(float From, float To, double Warped = 0)
{
    /// <summary>The least height that is to be read, in pixels.</summary>
    public const float Least = 8;

    /// <summary>Big digits.</summary>
    public static SampleRange Big { get; } = new(16, 64);

    /// <summary>Small marks.</summary>
    public static SampleRange Small { get; } = new(Least, 16);

    /// <summary>The part of the samples that are no digit.</summary>
    public const double NoDigits = 0.2;
}
