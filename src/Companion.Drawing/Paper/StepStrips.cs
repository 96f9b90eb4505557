using Companion.Drawing.Stills;
using SkiaSharp;

namespace Companion.Drawing.Paper;

/// <summary>Makes strips of an item of a list: its number, its sign in a frame, its words, its note and its figure.</summary>
internal sealed class StepStrips(Lettering letters, SKRect body)
{
    private const float NumberGap = 8;
    private const float ItemGap = 2.5f;
    private const float SignPadding = 3;
    private const float FrameWidth = 0.8f;
    private const float NoteBar = 2;

    private TextPlace Place => new(body.Left + Measures.Indent, body.Width - Measures.Indent);

    internal List<Strip> Of(string number, Step step)
    {
        var sign = step.Sign.Length > 0 ? letters.WidthOf(step.Sign, Measures.Small, bold: true) + 2 * SignPadding : 0;
        var strips = TextStrips.Of(letters, step.Text, Place with { FirstIndent = sign > 0 ? sign + SignPadding : 0 });
        if (strips.Count == 0)
            strips.Add(new(Measures.Text * Measures.Leading, (_, _) => { }));
        strips[0] = strips[0].After((sheet, top) => Begin(sheet, number, step.Sign, sign, top)) with { Gap = ItemGap };
        if (step.Note.Length > 0)
            Join(strips, Note(step.Note));
        if (step.Figure is not { } figure)
            return strips;

        // Words are read with the board beside them: they stand on one page with it.
        Join(strips, [FigureStrips.InStep(figure, Place)]);
        return [.. strips.SkipLast(1).Select(strip => strip with { StaysWithNext = true }), strips[^1]];
    }

    private static void Join(List<Strip> strips, IEnumerable<Strip> more)
    {
        for (var line = Math.Max(0, strips.Count - 2); line < strips.Count; line++)
            strips[line] = strips[line] with { StaysWithNext = true };
        strips.AddRange(more);
    }

    private IEnumerable<Strip> Note(string note) =>
        TextStrips.Of(letters, note, new(Place.Left + NumberGap, Place.Width - NumberGap) { IsBold = true })
            .Select(line => line.After((sheet, top) =>
            {
                using var paint = new SKPaint { Color = sheet.Colours.Words.ToSkia() };
                sheet.Canvas.DrawRect(SKRect.Create(Place.Left, top, NoteBar, line.Height), paint);
            }));

    private void Begin(Sheet sheet, string number, string sign, float signWidth, float top)
    {
        sheet.WriteUpTo(number, Place.Left - NumberGap, top, Measures.Text, quiet: true);
        if (sign.Length == 0)
            return;
        using var frame = new SKPaint
        {
            Style = SKPaintStyle.Stroke,
            StrokeWidth = FrameWidth,
            Color = sheet.Colours.Words.ToSkia(),
            IsAntialias = true,
        };
        sheet.Canvas.DrawRect(SKRect.Create(Place.Left + FrameWidth / 2, top + 1, signWidth - FrameWidth, Measures.Text * Measures.Leading - 2), frame);
        var lift = (Measures.Text - Measures.Small) * Measures.BaseLine;
        sheet.Write(sign, Place.Left + SignPadding, top + lift, Measures.Small, bold: true);
    }
}
