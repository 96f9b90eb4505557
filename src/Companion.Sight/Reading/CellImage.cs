namespace Companion.Sight.Reading;

/// <summary>
/// A whole cell brought to a common size, in its colours against its ground: what a network sees that does not depend on how the ink was
/// cut into signs.
/// </summary>
internal static class CellImage
{
    /// <summary>Columns, and rows.</summary>
    public const int Side = 64;

    /// <summary>How far each pixel is from the ground in red, green and blue, more where it is farther from white or black than the ground.</summary>
    public const int Planes = 3;

    /// <summary>Values of one image: plane by plane, row by row, from -1 to 1.</summary>
    public const int Values = Planes * Side * Side;

    private const int Plane = Side * Side;

    // Of the image, from the middle of one line to the middle of the next; the rest is room for strokes that see beyond the cell.
    private const float Body = 60;

    // Fainter ink is not made as strong as other ink is: it may be noise.
    private const float LeastPeak = 40;

    /// <summary>Where something in the straight picture is in the image.</summary>
    /// <param name="box">The cell.</param>
    /// <param name="x">The column of the picture.</param>
    /// <param name="y">The row of the picture.</param>
    public static (float X, float Y) Of(CellBox box, float x, float y) =>
        (InImage((x - box.X) / box.CellWidth), InImage((y - box.Y) / box.CellHeight));

    /// <summary>Where something in the image is in the cell.</summary>
    /// <param name="at">The column or the row of the image.</param>
    /// <returns>From the cell's one line (0) to the other (1).</returns>
    public static float InCell(float at) => (at - (Side - Body) / 2) / Body;

    /// <summary>Where something in the cell is in the image.</summary>
    /// <param name="at">From the cell's one line (0) to the other (1).</param>
    /// <returns>The column or the row of the image.</returns>
    public static float InImage(float at) => at * Body + (Side - Body) / 2;

    /// <summary>Draws one.</summary>
    /// <param name="ink">The cell.</param>
    /// <param name="values">Where it is put: <see cref="Values"/> long.</param>
    public static void Draw(CellInk ink, Span<float> values)
    {
        var (cell, ground, box) = (ink.Cell, ink.Ground, ink.Box);
        var scale = (IsLight(ground.Middle) ? 1 : -1) / Math.Max(LeastPeak, ink.Peak);
        var planes = new float[Planes][];
        for (var plane = 0; plane < Planes; plane++)
            planes[plane] = new float[cell.Count];
        for (var (pixel, y) = (0, 0); y < cell.Height; y++)
        {
            for (var x = 0; x < cell.Width; x++, pixel++)
            {
                var away = (ground.At(x, y) - cell[pixel]) * scale;
                (planes[0][pixel], planes[1][pixel], planes[2][pixel]) = (Math.Clamp(away.Red, -1, 1), Math.Clamp(away.Green, -1, 1), Math.Clamp(away.Blue, -1, 1));
            }
        }

        var across = AreaMeans.Along(cell.Width, Side, box.X + box.CellWidth / 2 - box.Left, box.CellWidth / Body);
        var down = AreaMeans.Along(cell.Height, Side, box.Y + box.CellHeight / 2 - box.Top, box.CellHeight / Body);
        for (var plane = 0; plane < Planes; plane++)
            AreaMeans.Of(planes[plane], across, down, values.Slice(plane * Plane, Plane));
    }

    private static bool IsLight(Rgb colour) => colour.Red + colour.Green + colour.Blue > 3 * 127;
}
