namespace Companion.Sight.Reading;

/// <summary>Where a cell lies in a straight picture.</summary>
/// <param name="Left">The first column of pixels within its lines.</param>
/// <param name="Top">The first row within its lines.</param>
/// <param name="Right">The column after the last one.</param>
/// <param name="Bottom">The row after the last one.</param>
/// <param name="X">The middle of the line to its left.</param>
/// <param name="Y">The middle of the line above it.</param>
/// <param name="CellWidth">From the middle of that line to the middle of the next.</param>
/// <param name="CellHeight">From the middle of that line to the middle of the next.</param>
internal readonly record struct CellBox(int Left, int Top, int Right, int Bottom, float X, float Y, float CellWidth, float CellHeight)
{
    /// <summary>Columns.</summary>
    public int Width => Right - Left;

    /// <summary>Rows.</summary>
    public int Height => Bottom - Top;

    /// <summary>The pixels of one of its rows.</summary>
    /// <param name="frame">The straight picture.</param>
    /// <param name="y">From 0, its topmost row.</param>
    public ReadOnlySpan<byte> Row(Frame frame, int y) => frame.Pixels.Slice(4 * ((Top + y) * frame.Width + Left), 4 * Width);
}
