using System.Collections.Immutable;
using Companion.Engine;
using Companion.Sight.Reading;
using SkiaSharp;

namespace Companion.Sight.Tests.Reading;

/// <summary>Signs in the cells of a board, two above and two below or one in the middle, which a test says what they were read as.</summary>
internal sealed class ContextBoard
{
    /// <summary>How many cells have four signs; the others have a big one.</summary>
    public const int Marked = 45;

    private static readonly Frame Drawn = SketchedBoard.Of(canvas =>
    {
        using var small = SketchedBoard.Font("work-sans", 20);
        using var big = SketchedBoard.Font("work-sans", 50);
        using var ink = new SKPaint { Color = SKColors.Black, IsAntialias = true };
        for (var cell = 0; cell < Cell.Count; cell++)
        {
            var (x, y) = (SketchedBoard.Margin + cell % 9 * SketchedBoard.Cell + 40, SketchedBoard.Margin + cell / 9 * SketchedBoard.Cell + 40);
            for (var mark = 0; mark < 4 && cell < Marked; mark++)
                canvas.DrawText("5", x + (mark % 2 == 0 ? -20 : 20), y + (mark < 2 ? -13 : 27), SKTextAlign.Center, small, ink);
            if (cell >= Marked)
                canvas.DrawText("5", x, y + 18, SKTextAlign.Center, big, ink);
        }
    });

    private static readonly CellBox[] Boxes = StraightBoard.Of(Drawn, SketchedBoard.Place).Boxes;

    private readonly List<Sign>[] _signs = [.. Enumerable.Range(0, Cell.Count).Select(_ => new List<Sign>())];

    /// <summary>Has signs of a cell read, in reading order; the others are not there.</summary>
    /// <param name="cell">The cell's index.</param>
    /// <param name="readings">What they were read as.</param>
    public void Put(int cell, params IEnumerable<GlyphReading> readings)
    {
        var sketch = CellSketch.Of(Drawn, Boxes[cell]);
        _signs[cell] = [.. ReadingOrder.Of(sketch.Signs).Zip(readings, (sign, reading) =>
        {
            (sign.Reading, sign.Alone) = (reading, (reading, false));
            return sign;
        })];
    }

    /// <summary>The same of sure digits.</summary>
    /// <param name="cell">The cell's index.</param>
    /// <param name="digits">The digits.</param>
    public void Put(int cell, string digits) => Put(cell, digits.Select(digit => Sure(digit - '0')));

    /// <summary>What a cell's signs are read as by all that stands on the board.</summary>
    public IReadOnlyList<GlyphReading>[] Read()
    {
        BoardContext.Apply(
            [.. _signs.Select((signs, cell) => cell >= Marked
                ? new CellDigits(Cell.At(cell), signs.Find(sign => sign.Reading.Digit is not null), [], [])
                : new(Cell.At(cell), null, signs.FindAll(sign => sign.Reading.Digit is not null), signs.FindAll(sign => sign.Reading.Digit is null)))]);
        return [.. _signs.Select(signs => signs.ConvertAll(sign => sign.Reading))];
    }

    /// <summary>Read as a digit beyond doubt.</summary>
    /// <param name="digit">The digit.</param>
    public static GlyphReading Sure(int digit) => Guess(0.98f, (digit, 0.99f));

    /// <summary>Read as the first of some digits, or as nothing where the certainty is negative.</summary>
    /// <param name="certainty">How sure that is.</param>
    /// <param name="odds">How likely each is by its look.</param>
    public static GlyphReading Guess(float certainty, params (int Digit, float Odds)[] odds)
    {
        var all = new float[Digit.Count];
        foreach (var (digit, likely) in odds)
            all[digit - 1] = likely;
        return new(certainty < 0 ? null : Digit.Of(odds[0].Digit), Math.Abs(certainty)) { Odds = ImmutableArray.Create(all) };
    }
}
