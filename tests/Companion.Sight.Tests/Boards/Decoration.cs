using System.Globalization;

namespace Companion.Sight.Tests.Boards;

/// <summary>What is drawn under and over the digits and is no digit: shades, fills, shapes, the selection, a pointer.</summary>
internal static class Decoration
{
    public static (List<Drawn> Under, List<Drawn> Over) Of(BoardStyle style)
    {
        var random = new Random(style.Seed);
        List<Drawn> under = [.. Under(style, random)];
        return (under, [.. Over(style, random)]);
    }

    private static IEnumerable<Drawn> Under(BoardStyle style, Random random)
    {
        var cell = style.Cell;
        var (row, column) = (random.Next(9), random.Next(9));
        Drawn.Box Filled(int r, int c, string colour, string? second = null) => new(c * cell, r * cell, cell, cell, colour, 0, second);
        if (style.ShadesHouses)
        {
            for (var index = 0; index < 81; index++)
            {
                if (index / 9 == row || index % 9 == column || (index / 27 == row / 3 && index % 9 / 3 == column / 3))
                    yield return Filled(index / 9, index % 9, style.Colours.Shade);
            }
        }

        if (style.HasFills)
        {
            for (var fill = 0; fill < 8; fill++)
            {
                var second = random.Next(3) == 0 ? style.Colours.Fills[random.Next(4)] : null;
                yield return Filled(random.Next(9), random.Next(9), style.Colours.Fills[random.Next(4)], second);
            }
        }

        if (style.HasThermos)
        {
            foreach (var shape in Thermo(style, random).Concat(Thermo(style, random)))
                yield return shape;
        }

        if (style.HasCircles)
        {
            for (var circle = 0; circle < 6; circle++)
            {
                var path = Drawn.Shape.Circle((random.Next(9) + 0.5f) * cell, (random.Next(9) + 0.5f) * cell, 0.42f * cell);
                yield return random.Next(2) == 0
                    ? new Drawn.Shape(path, style.Colours.Shape)
                    : new Drawn.Shape(path, "none", style.Colours.BlockLine, 1.5f);
            }
        }

        if (style.HasCages)
        {
            for (var cage = 0; cage < 4; cage++)
            {
                var (r, c) = (random.Next(8), random.Next(8));
                var inset = 0.07f * cell;
                var (wide, high) = (random.Next(1, 3), random.Next(1, 3));
                yield return new Drawn.Stroke(
                    N($"M{c * cell + inset} {r * cell + inset}h{wide * cell - 2 * inset}v{high * cell - 2 * inset}h{-wide * cell + 2 * inset}Z"),
                    style.Colours.BlockLine, 1, Dash: 4);
            }
        }

        if (style.Selection == 1)
            yield return Filled(row, column, style.Colours.Selected);
    }

    private static IEnumerable<Drawn> Over(BoardStyle style, Random random)
    {
        var cell = style.Cell;
        var (row, column) = (random.Next(9), random.Next(9));
        if (style.Selection == 2)
        {
            var thickness = 0.06f * cell;
            yield return new Drawn.Box(
                column * cell + 1 + thickness / 2, row * cell + 1 + thickness / 2, cell - 2 - thickness, cell - 2 - thickness, "none", 0, null, style.Colours.Fills[0], thickness);
        }

        if (style.HasPointer)
        {
            var (x, y) = ((float)random.NextDouble() * 8 * cell, (float)random.NextDouble() * 8 * cell);
            yield return new Drawn.Shape(N($"M{x} {y}v17l4 -4l3 7l3 -1l-3 -7h6Z"), "#000000", "#ffffff", 1);
        }
    }

    private static IEnumerable<Drawn> Thermo(BoardStyle style, Random random)
    {
        var cell = style.Cell;
        var (row, column) = (random.Next(9), random.Next(9));
        var path = N($"M{(column + 0.5f) * cell} {(row + 0.5f) * cell}");
        yield return new Drawn.Shape(Drawn.Shape.Circle((column + 0.5f) * cell, (row + 0.5f) * cell, 0.36f * cell), style.Colours.Shape);
        for (var step = 0; step < 4; step++)
        {
            row = Math.Clamp(row + random.Next(-1, 2), 0, 8);
            column = Math.Clamp(column + random.Next(-1, 2), 0, 8);
            path += N($"L{(column + 0.5f) * cell} {(row + 0.5f) * cell}");
        }

        yield return new Drawn.Stroke(path, style.Colours.Shape, 0.24f * cell, IsRound: true);
    }

    private static string N(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
