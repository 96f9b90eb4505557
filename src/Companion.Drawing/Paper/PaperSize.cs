namespace Companion.Drawing.Paper;

/// <summary>A size of paper, upright.</summary>
/// <param name="Name">What it is called on the command line and in style sheets.</param>
/// <param name="Width">Width in points of 1/72 inch.</param>
/// <param name="Height">Height in points.</param>
public sealed record PaperSize(string Name, int Width, int Height)
{
    /// <summary>210 by 297 mm, to the nearest point. Source: ISO 216.</summary>
    public static PaperSize A4 { get; } = new("a4", 595, 842);

    /// <summary>8.5 by 11 inches. Source: ANSI/ASME Y14.1, size A.</summary>
    public static PaperSize Letter { get; } = new("letter", 612, 792);

    /// <summary>The size of this name.</summary>
    /// <param name="name">The name.</param>
    /// <returns>The size, or null where none has this name.</returns>
    public static PaperSize? Named(string name) => name == A4.Name ? A4 : name == Letter.Name ? Letter : null;
}
