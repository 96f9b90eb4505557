namespace Companion.Sight.Reading;

/// <summary>A cell's ink, sorted: what may be digits, and what is left over.</summary>
internal sealed class CellSketch
{
    // Soft edges and faint parts of a glyph reach down to this part of the darkest ink; noise of compression around it stays below.
    private const float Faint = 0.22f;

    // Where a glyph stands on a line or shape of another colour, its own ink is nearer to the darkest than that is.
    private static readonly float[] _splits = [0.5f, 0.7f];

    private CellSketch(CellInk ink) => Ink = ink;

    /// <summary>The ink.</summary>
    public CellInk Ink { get; }

    /// <summary>What may be digits.</summary>
    public List<Sign> Signs { get; } = [];

    /// <summary>What reaches into the cell and is no glyph by its size and place.</summary>
    public List<Blob> Leftovers { get; } = [];

    /// <summary>What is too small to be a digit, away from the cell's edges: it may be a piece of one.</summary>
    public List<Blob> Crumbs { get; } = [];

    /// <summary>Whether a ring was taken out that something touched: strokes may be gone with it.</summary>
    public bool HadRing { get; private set; }

    /// <summary>What was found in it as a whole; null where nobody looked.</summary>
    public IReadOnlyList<CellFinding>? Findings { get; set; }

    /// <summary>Its marks as they were before, where it was seen before.</summary>
    public FormerMarks Before { get; private init; } = FormerMarks.None;

    /// <summary>Looks at a cell.</summary>
    /// <param name="frame">The straight picture.</param>
    /// <param name="box">The cell.</param>
    /// <param name="last">The cell as it was at the last look; null where it is seen for the first time.</param>
    public static CellSketch Of(Frame frame, CellBox box, CellSketch? last = null)
    {
        var sketch = new CellSketch(CellInk.Of(frame, box)) { Before = last is null ? FormerMarks.None : FormerMarks.Of(last) };
        if (sketch.Ink.IsBlank)
            return sketch;
        sketch.Ink.TakeOutLines(sketch.Least);
        var blobs = sketch.Blobs();
        if (blobs.Exists(sketch.TakeOutRing))
            blobs = sketch.Blobs();
        foreach (var blob in blobs.Where(blob => !BlobSorting.IsDash(blob, blobs, sketch.Ink)))
            sketch.Take(blob, split: 0);
        return sketch;
    }

    private float Least => Math.Max(Ink.Noise, Faint * Ink.Peak);

    private List<Blob> Blobs() => Reading.Blobs.Of(Ink, Least);

    // A ring that nothing touches is no digit as it is.
    private bool TakeOutRing(Blob blob)
    {
        if (BlobSorting.Of(blob, Ink) == BlobKind.Ignorable || Ring.Of(blob, Ink) is not { } ring)
            return false;
        ring.TakeOut();
        return HadRing = true;
    }

    private void Take(Blob blob, int split)
    {
        switch (BlobSorting.Of(blob, Ink))
        {
            case BlobKind.Glyph when split > 0 || !IsOnShape(blob):
                Signs.Add(new(blob, Ink));
                break;
            case BlobKind.Edging when split == _splits.Length || IsOneInk(blob, split):
                Signs.Add(new(blob, Ink));
                break;
            case BlobKind.Edging or BlobKind.Obstacle when split == 0 && Core(blob) is { } core:
                Signs.Add(new(core, Ink) { IsMixed = true });
                break;
            case BlobKind.Ignorable when split == 0 && BlobSorting.IsCrumb(blob, Ink):
                Crumbs.Add(blob);
                break;
            case not BlobKind.Ignorable when split < _splits.Length:
                var found = Signs.Count;
                foreach (var part in Reading.Blobs.Within(Ink, blob, _splits[split] * blob.Peak))
                    Take(part, split + 1);
                if (Signs.Count > found)
                    Leave(blob.Without(Signs.Skip(found).Select(sign => sign.Blob), Ink));
                else if (split == 0)
                    Leave(blob);
                break;
        }
    }

    // What is no larger than a mark and meets the edge with its darkest parts too: a mark and the soft edge of a line, in one.
    private Blob? Core(Blob blob)
    {
        if (IsLarge(blob))
            return null;
        var parts = Reading.Blobs.Within(Ink, blob, _splits[0] * blob.Peak);
        return parts.Exists(part => BlobSorting.Of(part, Ink) == BlobKind.Glyph) ? null : Blob.Union(parts);
    }

    private bool IsLarge(Blob blob)
    {
        const float Large = 0.42f;
        return Math.Max(blob.Height / Ink.Box.CellHeight, blob.Width / Ink.Box.CellWidth) >= Large;
    }

    // A glyph keeps its size at a higher threshold; a glyph on a shape loses the shape.
    private bool IsOneInk(Blob blob, int split)
    {
        const float Most = 0.8f;
        var parts = Reading.Blobs.Within(Ink, blob, _splits[split] * blob.Peak);
        return parts.Exists(part => part.Height >= Most * blob.Height && part.Width >= Most * blob.Width);
    }

    // What is large and loses much of its size at a higher threshold: a mark, and a faint shape that it touches.
    private bool IsOnShape(Blob blob)
    {
        const float Least = 0.7f;
        if (!IsLarge(blob))
            return false;
        var parts = Reading.Blobs.Within(Ink, blob, _splits[0] * blob.Peak);
        var whole = Blob.Union(parts);
        return whole.Height < Least * blob.Height || whole.Width < Least * blob.Width;
    }

    private void Leave(Blob blob)
    {
        if (BlobSorting.Of(blob, Ink) != BlobKind.Ignorable)
            Leftovers.Add(blob);
    }
}
