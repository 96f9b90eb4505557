namespace Companion.Sight.Reading;

/// <summary>
/// The colour of a cell's ground: flat, or changing evenly over the cell as gradients and light on paper do. It starts with the most
/// frequent colour and takes in what lies near it, so that ink decides nothing.
/// </summary>
internal sealed class Ground
{
    private const float Near = 24;
    private const float Flat = 8;
    private const float MostlyFlat = 0.55f;

    private readonly Rgb _middle;
    private readonly Rgb _across;
    private readonly Rgb _down;
    private readonly float _width;
    private readonly float _height;

    private Ground(Rgb middle, Rgb across, Rgb down, CellPixels cell) =>
        (_middle, _across, _down, _width, _height) = (middle, across, down, cell.Width, cell.Height);

    /// <summary>Its colour in the middle of the cell.</summary>
    public Rgb Middle => _middle;

    /// <summary>Whether it is the same all over.</summary>
    public bool IsFlat => _across == default && _down == default;

    /// <summary>Its colour at a pixel.</summary>
    /// <param name="x">The column.</param>
    /// <param name="y">The row.</param>
    public Rgb At(int x, int y) => _middle + _across * ((x + 0.5f) / _width - 0.5f) + _down * ((y + 0.5f) / _height - 0.5f);

    /// <summary>Measures it.</summary>
    /// <param name="cell">The cell.</param>
    public static Ground Of(CellPixels cell)
    {
        var sample = cell.Sample();
        var mode = sample.Mode();
        var ground = new Ground(mode, default, default, cell);
        if (sample.PartNear(mode, Flat) >= MostlyFlat)
            return ground;
        for (var pass = 0; pass < 4; pass++)
            ground = ground.Refit(cell);
        return ground;
    }

    // Least squares over the pixels near the present fit. The cross terms of an evenly filled cell vanish, and near enough here.
    private Ground Refit(CellPixels cell)
    {
        var (sum, across, down) = (default(Rgb), default(Rgb), default(Rgb));
        var (count, x1, y1, xx, yy, xy) = (0, 0f, 0f, 0f, 0f, 0f);
        for (var pixel = 0; pixel < cell.Count; pixel++)
        {
            var (x, y) = (pixel % cell.Width, pixel / cell.Width);
            var colour = cell[pixel];
            if (colour.Distance(At(x, y)) > Near)
                continue;
            var (u, v) = ((x + 0.5f) / _width - 0.5f, (y + 0.5f) / _height - 0.5f);
            count++;
            (x1, y1, xx, yy, xy) = (x1 + u, y1 + v, xx + u * u, yy + v * v, xy + u * v);
            (sum, across, down) = (sum + colour, across + colour * u, down + colour * v);
        }

        if (count < 12)
            return this;
        var (mx, my) = (x1 / count, y1 / count);
        var (cxx, cyy, cxy) = (xx / count - mx * mx, yy / count - my * my, xy / count - mx * my);
        var determinant = cxx * cyy - cxy * cxy;
        if (determinant < 1e-5f)
            return this;
        var mean = sum * (1f / count);
        var (ca, cd) = (across * (1f / count) - mean * mx, down * (1f / count) - mean * my);
        var slopeAcross = (ca * cyy - cd * cxy) * (1 / determinant);
        var slopeDown = (cd * cxx - ca * cxy) * (1 / determinant);
        return new(mean - slopeAcross * mx - slopeDown * my, slopeAcross, slopeDown, cell);
    }
}
