namespace Companion.Drawing.Colours;

/// <summary>The looks of a board of our own.</summary>
/// <param name="Light">Dark on light.</param>
/// <param name="Dark">Light on dark.</param>
/// <param name="Paper">Black on white, for print.</param>
public sealed record BoardThemes(BoardColours Light, BoardColours Dark, BoardColours Paper)
{
    /// <summary>The look of this theme.</summary>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="theme"/> is none of them.</exception>
    public BoardColours this[Theme theme] => theme switch
    {
        Theme.Light => Light,
        Theme.Dark => Dark,
        Theme.Paper => Paper,
        _ => throw new ArgumentOutOfRangeException(nameof(theme), theme, "A theme is light, dark or paper."),
    };
}
