using System.Collections.Immutable;

namespace Companion.Sight.Tests.Boards;

/// <summary>What stands on made-up boards: digits of a solved grid, some given, some entered, and marks in empty cells.</summary>
internal static class BoardContent
{
    public static ImmutableArray<DrawnCell> Of(Random random, BoardStyle style)
    {
        var solution = Solved(random);
        var cells = ImmutableArray.CreateBuilder<DrawnCell>(81);
        // No puzzle with one solution has fewer than 17 givens.
        var order = Enumerable.Range(0, 81).OrderBy(_ => random.Next()).ToArray();
        var givens = order[..random.Next(19, 33)].ToHashSet();
        var entered = order[givens.Count..(givens.Count + (int)(40 * random.NextDouble() * random.NextDouble()))].ToHashSet();
        var marked = style.Marks == MarkPlaces.None ? 0 : 0.35 + 0.6 * random.NextDouble();
        for (var index = 0; index < 81; index++)
        {
            if (givens.Contains(index) || entered.Contains(index))
                cells.Add(new(solution[index], givens.Contains(index), []));
            else
                cells.Add(new(0, false, random.NextDouble() < marked ? Marks(random, style, solution[index]) : []));
        }

        return cells.ToImmutable();
    }

    private static ImmutableArray<DrawnMark> Marks(Random random, BoardStyle style, int digit)
    {
        var most = style.Marks switch { MarkPlaces.Corners => 4, MarkPlaces.CentreRow => 4, _ => 7 };
        var count = random.Next(1, most + 1);
        var digits = Enumerable.Range(1, 9).Where(other => other != digit).OrderBy(_ => random.Next()).Take(count - 1).Append(digit).Order();
        return [.. digits.Select(mark => new DrawnMark(mark, style.Strike != Strike.None && mark != digit && random.NextDouble() < 0.2))];
    }

    // Any solved grid will do: a shifted pattern, its digits, rows and columns shuffled within their bands.
    private static int[] Solved(Random random)
    {
        var digits = Enumerable.Range(1, 9).OrderBy(_ => random.Next()).ToArray();
        var rows = Lines(random);
        var columns = Lines(random);
        return [.. from row in rows from column in columns select digits[(3 * (row % 3) + row / 3 + column) % 9]];
    }

    private static int[] Lines(Random random) =>
        [.. from band in Enumerable.Range(0, 3).OrderBy(_ => random.Next()) from line in Enumerable.Range(0, 3).OrderBy(_ => random.Next()) select 3 * band + line];
}
