using System.Collections.Immutable;
using Companion.Engine.Search;

namespace Companion.Sight.Tests.Boards;

/// <summary>What stands on made-up boards: a puzzle of our own, some digits entered, and marks in empty cells.</summary>
internal static class BoardContent
{
    public static ImmutableArray<DrawnCell> Of(Random random, BoardStyle style)
    {
        var cells = ImmutableArray.CreateBuilder<DrawnCell>(81);
        var puzzle = Generator.Make((ulong)random.NextInt64(), new() { Clues = random.Next(22, 33) });
        var solution = puzzle.Solution.ToString().Select(digit => digit - '0').ToArray();
        var givens = puzzle.Board.Givens.Select(cell => cell.Index).ToHashSet();
        var order = Enumerable.Range(0, 81).Where(index => !givens.Contains(index)).OrderBy(_ => random.Next()).ToArray();
        var entered = order[..(int)(40 * random.NextDouble() * random.NextDouble())].ToHashSet();
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
}
