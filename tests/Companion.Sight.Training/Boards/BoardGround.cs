using Companion.Sight.Tests.Boards;
using SkiaSharp;

namespace Companion.Sight.Training.Boards;

/// <summary>Paints what is under the digits of a board, and single things.</summary>
internal static class BoardGround
{
    /// <summary>Paints the cells with their lines and all that decorates them.</summary>
    public static void Paint(SKCanvas canvas, BoardStyle style)
    {
        var under = Decoration.Of(style).Under;
        if (style.Technique == Technique.Cards)
        {
            PaintCards(canvas, style);
            under = under.FindAll(drawn => drawn is not Drawn.Box);
        }
        else
        {
            Fill(canvas, SKRect.Create(style.Side, style.Side), style.Colours.Cell, style.Rounding);
        }

        foreach (var drawn in under)
            Paint(canvas, drawn);
        if (style.Technique != Technique.Cards)
            PaintLines(canvas, style);
    }

    /// <summary>Paints one thing.</summary>
    public static void Paint(SKCanvas canvas, Drawn drawn)
    {
        switch (drawn)
        {
            case Drawn.Box box:
                var place = SKRect.Create(box.X, box.Y, box.Width, box.Height);
                if (box.Fill != "none")
                {
                    using var fill = new SKPaint { IsAntialias = true, Color = SKColor.Parse(box.Fill) };
                    fill.Shader = box.Second is null ? null : SKShader.CreateLinearGradient(
                        new(place.Left, place.Top), new(place.Right, place.Bottom), [SKColor.Parse(box.Fill), SKColor.Parse(box.Second)], SKShaderTileMode.Clamp);
                    canvas.DrawRoundRect(place, box.Rounding, box.Rounding, fill);
                }

                if (box.Line is not null)
                {
                    using var pen = Pen(box.Line, box.Thickness);
                    canvas.DrawRoundRect(place, box.Rounding, box.Rounding, pen);
                }

                break;
            case Drawn.Stroke stroke:
                using (var path = SKPath.ParseSvgPathData(stroke.Points))
                using (var pen = Pen(stroke.Colour, stroke.Thickness))
                {
                    if (stroke.Dash > 0)
                        pen.PathEffect = SKPathEffect.CreateDash([stroke.Dash, stroke.Dash], 0);
                    if (stroke.IsRound)
                        (pen.StrokeCap, pen.StrokeJoin) = (SKStrokeCap.Round, SKStrokeJoin.Round);
                    canvas.DrawPath(path, pen);
                }

                break;
            case Drawn.Shape shape:
                using (var path = SKPath.ParseSvgPathData(shape.Points))
                {
                    if (shape.Fill != "none")
                    {
                        using var fill = new SKPaint { IsAntialias = true, Color = SKColor.Parse(shape.Fill) };
                        canvas.DrawPath(path, fill);
                    }

                    if (shape.Line != "none")
                    {
                        using var pen = Pen(shape.Line, shape.Thickness);
                        canvas.DrawPath(path, pen);
                    }
                }

                break;
            default:
                throw new ArgumentException($"{drawn.GetType().Name} is not painted here.", nameof(drawn));
        }
    }

    private static void PaintCards(SKCanvas canvas, BoardStyle style)
    {
        var shaded = new Random(style.Seed).Next(9);
        Fill(canvas, SKRect.Create(style.Side, style.Side), style.Colours.BlockLine, 0);
        var gap = style.CellLine / 2f + 0.5f;
        for (var index = 0; index < 81; index++)
        {
            var (row, column) = (index / 9, index % 9);
            Fill(
                canvas, SKRect.Create(column * style.Cell + gap, row * style.Cell + gap, style.Cell - 2 * gap, style.Cell - 2 * gap),
                style.ShadesHouses && row == shaded ? style.Colours.Shade : style.Colours.Cell, Math.Min(style.Rounding, style.Cell / 6));
        }
    }

    private static void PaintLines(SKCanvas canvas, BoardStyle style)
    {
        foreach (var isBlock in (bool[])[false, true])
        {
            using var pen = Pen(isBlock ? style.Colours.BlockLine : style.Colours.CellLine, isBlock ? style.BlockLine : style.CellLine);
            for (var line = 1; line < 9; line++)
            {
                if (line % 3 == 0 != isBlock)
                    continue;
                canvas.DrawLine(line * style.Cell, 0, line * style.Cell, style.Side, pen);
                canvas.DrawLine(0, line * style.Cell, style.Side, line * style.Cell, pen);
            }
        }

        if (style.Border == 0)
            return;
        using var border = Pen(style.Colours.BlockLine, style.Border);
        canvas.DrawRoundRect(SKRect.Create(style.Side, style.Side), style.Rounding, style.Rounding, border);
    }

    private static void Fill(SKCanvas canvas, SKRect place, string colour, float rounding)
    {
        using var paint = new SKPaint { IsAntialias = true, Color = SKColor.Parse(colour) };
        canvas.DrawRoundRect(place, rounding, rounding, paint);
    }

    private static SKPaint Pen(string colour, float thickness) =>
        new() { IsAntialias = true, Style = SKPaintStyle.Stroke, Color = SKColor.Parse(colour), StrokeWidth = thickness };
}
