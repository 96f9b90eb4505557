using Companion.Drawing.Colours;
using Companion.Session.State;
using SkiaSharp;

namespace Companion.Drawing.Stills.Overlays;

/// <summary>Paints the overlay's caption: light letters on a dark plate with a light edge and a dark one round it.</summary>
internal sealed class CaptionPainter(SKCanvas canvas, Lettering letters, Palette palette, SKSize picture)
{
    // In letters' sizes; the page's style sheet has the same.
    private const float LineHeight = 1.3f;
    private const float PaddingAcross = 0.7f;
    private const float PaddingDown = 0.35f;
    private const float Edge = 0.08f;

    // Of the fonts that travel with the assembly: how far letters reach above and below the base line.
    private const float Ascent = 0.928f;
    private const float Descent = 0.236f;

    private readonly float _size = (float)(CaptionPlace.LetterHeight * picture.Height);

    // Browsers draw edges in whole pixels, at least one.
    private readonly float _edge = Math.Max(1, MathF.Floor((float)(CaptionPlace.LetterHeight * picture.Height) * Edge));

    internal void Paint(string words, Frame board)
    {
        var place = CaptionPlace.Of(board, words.Length, picture.Width / picture.Height);
        var room = SKRect.Create(
            (float)place.Room.Left * picture.Width,
            (float)place.Room.Top * picture.Height,
            (float)place.Room.Width * picture.Width,
            (float)place.Room.Height * picture.Height);
        var around = 2 * (PaddingAcross * _size + _edge);
        var lines = CaptionLines.Of(
            words.Split(' ', StringSplitOptions.RemoveEmptyEntries), room.Width - around, text => letters.WidthOf(text, _size, bold: true));
        var longest = lines.Max(line => letters.WidthOf(line, _size, bold: true));

        // Words that are broken into lines fill the room's width.
        var width = lines.Count > 1 ? room.Width : Math.Min(room.Width, longest + around);
        var height = (lines.Count * LineHeight + 2 * PaddingDown) * _size + 2 * _edge;
        var box = Rounded(SKRect.Create(LeftOf(place.Side, room, width), TopOf(place.Side, room, height), width, height));
        Fill(Grown(box, _edge), palette.DarkEdge);
        Fill(box, palette.LightEdge);
        Fill(Grown(box, -_edge), palette.DarkEdge);
        for (var line = 0; line < lines.Count; line++)
            Write(lines[line], box, line);
    }

    private static float LeftOf(CaptionSide side, SKRect room, float width) => side switch
    {
        CaptionSide.Left => room.Right - width,
        CaptionSide.Right => room.Left,
        _ => room.MidX - width / 2,
    };

    private static float TopOf(CaptionSide side, SKRect room, float height) => side == CaptionSide.Below ? room.Top : room.Bottom - height;

    private void Write(string line, SKRect box, int number)
    {
        var middle = (LineHeight - Ascent - Descent) / 2 + Ascent;
        var start = new SKPoint(
            box.Left + PaddingAcross * _size + _edge, MathF.Round(box.Top + _edge + (PaddingDown + number * LineHeight + middle) * _size));
        letters.Line(canvas, line, start, _size, palette.InkOn(palette.DarkEdge), bold: true);
    }

    private void Fill(SKRect area, Colour colour)
    {
        using var paint = new SKPaint { IsAntialias = true, Color = colour.ToSkia() };
        canvas.DrawRect(area, paint);
    }

    private static SKRect Rounded(SKRect box) =>
        new(MathF.Round(box.Left), MathF.Round(box.Top), MathF.Round(box.Right), MathF.Round(box.Bottom));

    private static SKRect Grown(SKRect box, float by)
    {
        box.Inflate(by, by);
        return box;
    }
}
