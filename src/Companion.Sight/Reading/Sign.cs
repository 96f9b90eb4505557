namespace Companion.Sight.Reading;

/// <summary>Something in a cell that may be a digit, and what it was read as.</summary>
internal sealed class Sign
{
    // Parts of the cell.
    private const float OffMiddle = 0.2f;

    // How much higher a line through a mark may make it.
    private const float WithLine = 1.25f;

    private Rgb? _colour;

    /// <summary>Makes one that was not read yet.</summary>
    /// <param name="blob">Its ink.</param>
    /// <param name="ink">Its cell.</param>
    public Sign(Blob blob, CellInk ink)
        : this(blob, ink, InkPatch.Of(blob, ink))
    {
    }

    /// <summary>Makes one of which a part is looked at.</summary>
    /// <param name="blob">Its ink.</param>
    /// <param name="ink">Its cell.</param>
    /// <param name="patch">The part.</param>
    public Sign(Blob blob, CellInk ink, InkPlane patch)
    {
        (Blob, Ink, Patch) = (blob, ink, patch);
        Glyph = GlyphImage.Cut(patch, new(0, 0, patch.Width, patch.Height));
    }

    /// <summary>Its ink.</summary>
    public Blob Blob { get; }

    /// <summary>Its cell.</summary>
    public CellInk Ink { get; }

    /// <summary>Its ink alone, or the part of it that is looked at.</summary>
    public InkPlane Patch { get; }

    /// <summary>What the network looks at.</summary>
    public GlyphImage Glyph { get; }

    /// <summary>Whether it was cut out of something larger that could not be read.</summary>
    public bool IsPart { get; set; }

    /// <summary>Whether it meets the cell's edge and is not one ink: a mark and the soft edge of the line, or a shape of the next cell.</summary>
    public bool IsMixed { get; init; }

    /// <summary>What it was read as among what stands around it; no odds where nobody looked.</summary>
    public SignReading Around { get; set; }

    /// <summary>What it was read as by itself, and whether a line was seen to go through it.</summary>
    public (GlyphReading Reading, bool IsStruck) Alone { get; set; }

    /// <summary>What it is most like beside others of the board, and whether with a line through it; no digit where nothing was compared.</summary>
    public (Engine.Digit? Digit, bool IsStruck) Likest { get; set; }

    /// <summary>What it was read as.</summary>
    public GlyphReading Reading { get; set; }

    /// <summary>Whether a line goes through it.</summary>
    public bool IsStruck { get; set; }

    /// <summary>Whether a line seems to go through it, to the one way of seeing that or to the other.</summary>
    public bool MayBeStruck => IsStruck || Around.Line >= 0.5f;

    /// <summary>Whether it is no big digit: it is low, or a line goes through it, which makes it higher and which only marks have.</summary>
    /// <param name="bigFrom">From which height on a digit is big.</param>
    public bool IsMark(float bigFrom) => Height < bigFrom || (Height < WithLine * bigFrom && (IsStruck || Around.Line >= LineWitnesses.Certain));

    /// <summary>Whether it is a digit beyond doubt.</summary>
    public bool IsSure => Reading.Digit is not null && Reading.Certainty >= CellReading.Sure;

    /// <summary>Its height as a part of the cell's.</summary>
    public float Height => Blob.Height / Ink.Box.CellHeight;

    /// <summary>Its middle, from the cell's left line (0) to the right one (1).</summary>
    public float X => ((Blob.Left + Blob.Right) / 2f + Ink.Box.Left - Ink.Box.X) / Ink.Box.CellWidth;

    /// <summary>Its middle, from the cell's upper line (0) to the lower one (1).</summary>
    public float Y => ((Blob.Top + Blob.Bottom) / 2f + Ink.Box.Top - Ink.Box.Y) / Ink.Box.CellHeight;

    /// <summary>Whether it stands where no big digit does: that is about in the middle of its cell.</summary>
    public bool IsOffMiddle => Math.Max(Math.Abs(X - 0.5f), Math.Abs(Y - 0.5f)) > OffMiddle;

    /// <summary>The colour of its darkest parts, where it is ink and nothing else.</summary>
    public Rgb Colour => _colour ??= Core();

    private Rgb Core()
    {
        const float Dark = 0.8f;
        var (sum, count) = (default(Rgb), 0);
        foreach (var pixel in Blob.Pixels)
        {
            if (Ink.Distance[pixel] >= Dark * Blob.Peak)
                (sum, count) = (sum + Ink.Cell[pixel], count + 1);
        }

        return sum * (1f / Math.Max(1, count));
    }
}
