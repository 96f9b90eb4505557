using Companion.Drawing.Colours;
using Companion.Drawing.Pictures;
using SkiaSharp;

namespace Companion.Drawing.Stills;

/// <summary>Paints a legend: one below the other at the foot of a column, or in rows.</summary>
internal sealed class LegendPainter(SKCanvas canvas, Lettering letters, Colour words, PicturePainter shapes)
{
    // In lines of the legend: a sample, where the words begin, and how large they are.
    private const float SampleWidth = 1.6f;
    private const float WordsPlace = 1.9f;
    private const float WordsSize = 0.48f;
    private const float Gap = 1;

    private const float LineInUnits = 2.1f;
    private const float Shrink = 0.92f;
    private const float SmallestInUnits = 1;

    /// <summary>Paints it, smaller where it would not fit; what does not fit at half the size is left out.</summary>
    internal void Paint(IReadOnlyList<LegendEntry> entries, SKRect room, float unit, bool inColumn)
    {
        if (entries.Count == 0)
            return;
        var line = unit * LineInUnits;
        var places = Places(entries, room, line, inColumn);
        while (places[^1].Bottom > room.Bottom && line * Shrink >= unit * SmallestInUnits)
        {
            line *= Shrink;
            places = Places(entries, room, line, inColumn);
        }

        var down = inColumn ? Math.Max(0, room.Bottom - places[^1].Bottom) : 0;
        foreach (var (entry, place) in entries.Zip(places).Where(entry => entry.Second.Bottom <= room.Bottom + 1))
            Paint(entry, place with { Top = place.Top + down, Bottom = place.Bottom + down });
    }

    private List<SKRect> Places(IReadOnlyList<LegendEntry> entries, SKRect room, float line, bool inColumn)
    {
        var places = new List<SKRect>();
        var (left, top) = (room.Left, room.Top);
        foreach (var entry in entries)
        {
            var width = line * WordsPlace + letters.WidthOf(entry.Words, line * WordsSize);
            if (places.Count > 0 && (inColumn || left + width > room.Right))
                (left, top) = (room.Left, top + line);
            places.Add(SKRect.Create(left, top, width, line));
            left += width + line * Gap;
        }

        return places;
    }

    private void Paint(LegendEntry entry, SKRect place)
    {
        var line = place.Height;
        var cell = line * 0.8f * entry.Scale;
        var middle = entry.Sample is HouseShape or GroupShape or LinkShape ? 0.75f : 0.5f;
        shapes.Paint([entry.Sample], new(place.Left + line * SampleWidth / 2 - middle * cell, place.MidY - 0.5f * cell, cell));
        var size = line * WordsSize;
        letters.Line(canvas, entry.Words, new(place.Left + line * WordsPlace, place.MidY + size * 0.36f), size, words);
    }
}
