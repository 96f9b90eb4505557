namespace Companion.Sight;

/// <summary>How much ink there is in each pixel of a picture or of a part of one, whatever its colours were.</summary>
public sealed class InkPlane
{
    private readonly float[] _ink;

    /// <summary>Makes a plane.</summary>
    /// <param name="width">Columns, at least 1.</param>
    /// <param name="height">Rows, at least 1.</param>
    /// <param name="ink">For each pixel 0 (ground) to 1 (ink), row by row. Taken over, not copied.</param>
    /// <exception cref="ArgumentException">The sizes do not fit together.</exception>
    public InkPlane(int width, int height, float[] ink)
    {
        ArgumentNullException.ThrowIfNull(ink);
        ArgumentOutOfRangeException.ThrowIfLessThan(width, 1);
        ArgumentOutOfRangeException.ThrowIfLessThan(height, 1);
        if (ink.Length != (long)width * height)
            throw new ArgumentException("There is one value for each pixel.", nameof(ink));
        (Width, Height, _ink) = (width, height, ink);
    }

    /// <summary>Columns.</summary>
    public int Width { get; }

    /// <summary>Rows.</summary>
    public int Height { get; }

    /// <summary>For each pixel 0 (ground) to 1 (ink), row by row.</summary>
    public ReadOnlySpan<float> Ink => _ink;

    /// <summary>One row of it.</summary>
    /// <param name="y">From 0, the topmost one.</param>
    public ReadOnlySpan<float> Row(int y) => _ink.AsSpan(y * Width, Width);
}
