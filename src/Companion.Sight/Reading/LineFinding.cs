namespace Companion.Sight.Reading;

/// <summary>How far a mark's ink differs from how its digit looks, as a part of the digit's ink.</summary>
/// <param name="Plain">From the look as it is.</param>
/// <param name="Struck">From the look with a line through it.</param>
internal readonly record struct LineFinding(float Plain, float Struck)
{
    // Of what it differs by without the line. Marks with a line came out below 0.63, marks without above 1.4.
    private const float Through = 0.75f, None = 1.15f;

    /// <summary>The less of both.</summary>
    public float Least => Math.Min(Plain, Struck);

    /// <summary>Whether a line goes through it beyond doubt.</summary>
    public bool IsThrough => Struck <= Through * Plain;

    /// <summary>Whether none does beyond doubt.</summary>
    public bool IsNone => Struck >= None * Plain;
}
