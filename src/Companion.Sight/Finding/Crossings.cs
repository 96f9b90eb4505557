namespace Companion.Sight.Finding;

/// <summary>Where lines cross, measured cell by cell: lines that are not quite straight or level show there.</summary>
internal static class Crossings
{
    private const float Reach = 0.14f;

    /// <summary>The crossings that were seen.</summary>
    /// <param name="frame">A nearly straight picture of the grid.</param>
    /// <param name="fit">Its lines, about.</param>
    public static List<(int Column, int Row, PixelPoint At)> Of(Frame frame, GridFit fit)
    {
        var upright = Places(frame, fit.Columns, fit.Rows, isUpright: true);
        var level = Places(frame, fit.Rows, fit.Columns, isUpright: false);
        var crossings = new List<(int, int, PixelPoint)>();
        for (var column = 0; column < GridLines.Count; column++)
        {
            for (var row = 0; row < GridLines.Count; row++)
            {
                if (AtCrossing(upright[column], row) is { } x && AtCrossing(level[row], column) is { } y)
                    crossings.Add((column, row, new(x, y)));
            }
        }

        return crossings;
    }

    private static float?[][] Places(Frame frame, GridLines lines, GridLines along, bool isUpright)
    {
        var reach = Math.Max(3, Reach * lines.Pitch);
        var profile = StepProfile.Of(frame, along, lines.At[0] - reach, lines.At[^1] + reach, isUpright);
        return [.. lines.At.Select(at => Enumerable.Range(0, GridLines.Count - 1).Select(cell => profile.PlaceIn(cell, at, reach)).ToArray())];
    }

    // Between the middles of the two cells beside the crossing; at the ends, on from the last two.
    private static float? AtCrossing(float?[] places, int crossing) => crossing switch
    {
        0 => 1.5f * places[0] - 0.5f * places[1],
        GridLines.Count - 1 => 1.5f * places[^1] - 0.5f * places[^2],
        _ => (places[crossing - 1] + places[crossing]) / 2,
    };
}
