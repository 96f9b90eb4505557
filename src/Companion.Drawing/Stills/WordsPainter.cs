using Companion.Drawing.Colours;
using Companion.Drawing.Pictures;
using Companion.Session.State;
using SkiaSharp;

namespace Companion.Drawing.Stills;

/// <summary>Paints what stands beside or below the board: the credit, the caption on its plate, and the legend.</summary>
internal sealed class WordsPainter(
    SKCanvas canvas, Lettering letters, BoardColours colours, PicturePainter shapes, StillLayout layout)
{
    private readonly float _unit = layout.TextUnit;
    private float _top = layout.Words.Top;

    internal void Paint(Credit credit, Picture? picture)
    {
        PaintCredit(credit);
        if (picture is null)
            return;
        if (picture.Caption.Length > 0)
            PaintCaption(picture.Caption);
        var gap = _unit * 0.6f;
        new LegendPainter(canvas, letters, colours.Words, shapes).Paint(
            Legend.Of(picture), layout.Words with { Top = _top + gap }, _unit, inColumn: layout.IsWide);
    }

    private void PaintCredit(Credit credit)
    {
        if (credit.Title.Length > 0)
            Lines(credit.Title, 1.5f, colours.Words, bold: true, lines: layout.IsWide ? 2 : 1);
        if (credit.Setter.Length > 0)
            Lines($"set by {credit.Setter}", 1, colours.Words, bold: false, lines: 1);
        if (layout.IsWide && credit.Link.Length > 0)
            Lines(WithoutScheme(credit.Link), 0.8f, colours.QuietWords, bold: false, lines: 1);
    }

    private static string WithoutScheme(string link) =>
        link.IndexOf("://", StringComparison.Ordinal) is var at and >= 0 ? link[(at + 3)..].TrimEnd('/') : link;

    private void Lines(string text, float size, Colour colour, bool bold, int lines)
    {
        var height = size * _unit * 1.36f * lines;
        var block = TextBlock.Fit(letters, text, size * _unit, bold, new(layout.Words.Width, height));
        Write(block, new(layout.Words.Left, _top), colour, bold);
        _top += block.Height;
    }

    private void PaintCaption(string caption)
    {
        var padding = _unit * 0.8f;
        _top += layout.IsWide ? _unit * 1.2f : _unit * 0.5f;
        var room = new SKSize(layout.Words.Width - 2 * padding, layout.IsWide ? layout.Words.Height * 0.35f : _unit * 3.5f);
        var block = TextBlock.Fit(letters, caption, _unit * 1.25f, bold: false, room);
        var plate = SKRect.Create(layout.Words.Left, _top, layout.Words.Width, block.Height + 2 * padding);
        using var paint = new SKPaint { IsAntialias = true, Color = colours.Panel.ToSkia() };
        canvas.DrawRoundRect(plate, _unit * 0.4f, _unit * 0.4f, paint);
        Write(block, new(plate.Left + padding, plate.Top + padding), colours.Words, bold: false);
        _top = plate.Bottom;
    }

    private void Write(TextBlock block, SKPoint start, Colour colour, bool bold)
    {
        for (var line = 0; line < block.Lines.Count; line++)
        {
            var place = new SKPoint(start.X, start.Y + line * block.LineHeight + block.Size);
            letters.Line(canvas, block.Lines[line], place, block.Size, colour, bold);
        }
    }
}
