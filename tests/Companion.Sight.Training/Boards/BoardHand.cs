using Companion.Sight.Samples;
using Companion.Sight.Tests.Boards;
using SkiaSharp;

namespace Companion.Sight.Training.Boards;

/// <summary>How the digits and marks of one board are set, and the lines through marks drawn: wider apart than the styles of the tests are.</summary>
internal sealed class BoardHand
{
    private readonly BoardStyle _style;
    private readonly SKTypeface _given, _entered, _mark;
    private readonly SKFontHinting _hinting;
    private readonly bool _isSubpixel, _isLcd, _isBold;
    private readonly float _skew, _wide, _down, _spread, _reach, _rise, _thick, _lineDown;
    private readonly bool _isCross;
    private readonly int? _bent;
    private readonly bool _hasCrossedSeven;
    private readonly string[] _lineColours;

    /// <summary>Picks one.</summary>
    /// <param name="random">What is left to the lot.</param>
    /// <param name="style">The board's style.</param>
    /// <param name="families">The families to choose from.</param>
    public BoardHand(Random random, BoardStyle style, IReadOnlyDictionary<string, FontFamily> families)
    {
        _style = style;
        var isSlanted = random.Chance(0.1);
        (_given, _entered, _mark) = (
            Face(random, families[style.DigitFont], style.GivenWeight, isSlanted),
            Face(random, families[style.DigitFont], style.EnteredWeight, isSlanted),
            Face(random, families[style.MarkFont], random.Chance(0.85) ? 400 : 700, isSlanted));
        _hinting = random.Pick([SKFontHinting.None, SKFontHinting.None, SKFontHinting.Slight, SKFontHinting.Normal]);
        (_isSubpixel, _isLcd, _isBold) = (random.Chance(0.7), random.Chance(0.06), random.Chance(0.03));
        (_skew, _wide) = (random.Chance(0.05) ? -random.Between(0.08f, 0.25f) : 0, random.Chance(0.12) ? random.Between(0.87f, 1.13f) : 1);
        (_down, _spread) = (random.Normal(0.02f), random.Between(0.92f, 1.04f));
        // A hand of its own, in which each digit is always bent likewise.
        _bent = random.Chance(0.35) ? random.Next() : null;
        _hasCrossedSeven = random.Chance(0.12);
        // The lines: lying, rising, falling or crossed.
        var isRow = style.Marks == MarkPlaces.CentreRow;
        _reach = isRow ? random.Between(0.24f, 0.34f) : random.Between(0.28f, 0.5f);
        _rise = random.Chance(0.45) ? 0 : (random.Chance(0.75) ? 1 : -1) * random.Between(0.2f, 0.5f);
        _isCross = _rise != 0 && random.Chance(0.08);
        _thick = random.Between(0.045f, 0.1f);
        _lineDown = random.Normal(0.025f);
        _lineColours = random.Next(4) switch
        {
            0 => [style.Colours.Mark],
            1 => [style.Colours.Given],
            2 => [style.Colours.Mark, style.Colours.Given],
            _ => [style.Colours.Entered],
        };
    }

    /// <summary>A big digit.</summary>
    public Letter Digit(DrawnCell cell, int index) => Of(
        cell.Digit, cell.IsGiven ? _given : _entered, cell.IsGiven ? _style.Colours.Given : _style.Colours.Entered,
        _style.DigitSize, Middle(index).X, Middle(index).Y, []);

    /// <summary>One of a cell's marks.</summary>
    public Letter Mark(DrawnCell cell, int index, int at)
    {
        var (mark, size) = (cell.Marks[at], _style.MarkSize * _style.Cell);
        var (dx, dy) = _style.Marks switch
        {
            MarkPlaces.Corners => ((at % 2 - 0.5f) * 0.62f, (at / 2 % 2 - 0.5f) * 0.58f),
            MarkPlaces.CentreRow => ((at - (cell.Marks.Length - 1) / 2f) * Math.Min(0.66f * _style.MarkSize, 0.22f), 0),
            _ => (((mark.Digit - 1) % 3 - 1) * 0.3f, ((mark.Digit - 1) / 3 - 1) * 0.3f),
        };
        var (x, y) = (Middle(index).X + _spread * dx * _style.Cell, Middle(index).Y + _spread * dy * _style.Cell);
        return Of(mark.Digit, _mark, _style.Colours.Mark, _style.MarkSize, x, y, mark.IsStruck ? [.. Lines(x, y + _lineDown * size, size, at)] : []);
    }

    private (float X, float Y) Middle(int index) => ((index % 9 + 0.5f) * _style.Cell, (index / 9 + 0.5f) * _style.Cell);

    private IEnumerable<Line> Lines(float x, float y, float size, int at)
    {
        var (reach, rise, colour) = (_reach * size, _rise * size, _lineColours[at % _lineColours.Length]);
        yield return new(x - reach, y + rise, x + reach, y - rise, Math.Max(1 / Math.Max(1, _style.Scale), _thick * size), SKColor.Parse(colour));
        if (_isCross)
            yield return new(x - reach, y - rise, x + reach, y + rise, Math.Max(1, _thick * size), SKColor.Parse(colour));
    }

    private Letter Of(int digit, SKTypeface face, string colour, float size, float x, float y, Line[] lines)
    {
        var font = new SKFont(face, size * _style.Cell)
        {
            Hinting = _hinting,
            Subpixel = _isSubpixel,
            Edging = _isLcd ? SKFontEdging.SubpixelAntialias : SKFontEdging.Antialias,
            Embolden = _isBold,
            SkewX = _skew,
            ScaleX = _wide,
        };
        var text = digit.ToString(System.Globalization.CultureInfo.InvariantCulture);
        var at = new SKPoint(x - font.MeasureText(text) / 2, y + (0.35f + _down) * font.Size);
        var bent = _bent is { } hand ? Digits.Bent(new(hand + digit), font.GetTextPath(text, SKPoint.Empty), 0.7f * font.Size) : null;
        bent?.Transform(SKMatrix.CreateTranslation(at.X, at.Y));
        var ink = SKColor.Parse(colour);
        var bar = digit == 7 && _hasCrossedSeven ? Bar(x, at.Y, font.Size, ink) : null;
        return new(digit, font, text, at, bent, bar, ink, lines);
    }

    // The bar that many hands write through their 7: a stroke of it, and no line through a mark.
    private static Line Bar(float x, float y, float size, SKColor ink) =>
        new(x - 0.16f * size, y - 0.31f * size, x + 0.2f * size, y - 0.34f * size, Math.Max(1, 0.07f * size), ink);

    private static SKTypeface Face(Random random, FontFamily family, int weight, bool isSlanted)
    {
        var faces = family.Faces.Where(face => (face.FontSlant != SKFontStyleSlant.Upright) == isSlanted).ToList();
        if (faces.Count == 0)
            faces = [.. family.Faces];
        var near = faces.FindAll(face => Math.Abs(face.FontWeight - weight) <= 100);
        return near.Count > 0 ? random.Pick(near) : faces.MinBy(face => Math.Abs(face.FontWeight - weight))!;
    }

    /// <summary>A digit as it is painted.</summary>
    internal sealed record Letter(int Digit, SKFont Font, string Text, SKPoint At, SKPath? Bent, Line? Bar, SKColor Colour, Line[] Lines)
    {
        /// <summary>Where its ink is, in pixels of the page.</summary>
        public SKRect Bounds
        {
            get
            {
                using var outline = Bent is null ? Font.GetTextPath(Text, At) : new SKPath(Bent);
                return outline.TightBounds;
            }
        }

        /// <summary>Paints it.</summary>
        public void Paint(SKCanvas canvas)
        {
            using var paint = new SKPaint { IsAntialias = true, Color = Colour };
            if (Bent is null)
                canvas.DrawText(Text, At.X, At.Y, SKTextAlign.Left, Font, paint);
            else
                canvas.DrawPath(Bent, paint);
            foreach (var line in Bar is null ? Lines : [Bar, .. Lines])
            {
                using var pen = line.Pen;
                canvas.DrawLine(line.X1, line.Y1, line.X2, line.Y2, pen);
            }
        }
    }

    /// <summary>A line through a mark.</summary>
    internal sealed record Line(float X1, float Y1, float X2, float Y2, float Thickness, SKColor Colour)
    {
        /// <summary>What it is drawn with.</summary>
        public SKPaint Pen => new() { IsAntialias = true, Style = SKPaintStyle.Stroke, StrokeWidth = Thickness, Color = Colour };
    }
}
