namespace Companion.Sight.Finding;

/// <summary>Ten upright and ten level lines, and how far what is seen bears them out.</summary>
/// <param name="Columns">The upright lines, from the left.</param>
/// <param name="Rows">The level lines, from the top.</param>
/// <param name="Between">How much of a line there is midway between two lines, from 0 to 1: a finer grid has lines there too.</param>
internal sealed record GridFit(GridLines Columns, GridLines Rows, float Between)
{
    // Digits touch no line; only what covers lines takes some of their support away.
    private const float LeastMean = 0.8f;
    private const float LeastLine = 0.5f;
    private const float LeastContrast = 0.2f;

    // Cells of a grid are squares but for what stretches a whole picture.
    private const float MostStretch = 1.15f;

    /// <summary>From 0 to 1: how well the lines were seen.</summary>
    public float Score => (Columns.InnerSupport + Rows.InnerSupport) / 2;

    /// <summary>Whether this is a grid of nine by nine cells.</summary>
    public bool IsGrid =>
        Score >= LeastMean
        && Math.Min(Columns.LeastSupport, Rows.LeastSupport) >= LeastLine
        && Score - Between >= LeastContrast
        && Math.Max(Columns.Pitch, Rows.Pitch) <= MostStretch * Math.Min(Columns.Pitch, Rows.Pitch);

    /// <summary>Whether nothing can be a grid more clearly: every line along nearly every cell, and nothing like one between them.</summary>
    public bool IsClear => IsGrid && Math.Min(Columns.LeastSupport, Rows.LeastSupport) >= 0.85f && Between < 0.4f;

    /// <summary>The outer corners of the border.</summary>
    public GridPlace Place()
    {
        var (left, right) = (Columns.At[0] - Columns.Half[0], Columns.At[^1] + Columns.Half[^1]);
        var (top, bottom) = (Rows.At[0] - Rows.Half[0], Rows.At[^1] + Rows.Half[^1]);
        return new(new(left, top), new(right, top), new(right, bottom), new(left, bottom));
    }
}
