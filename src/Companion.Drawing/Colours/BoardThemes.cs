namespace Companion.Drawing.Colours;

/// <summary>The two looks of a board of our own.</summary>
/// <param name="Light">Dark on light.</param>
/// <param name="Dark">Light on dark.</param>
public sealed record BoardThemes(BoardColours Light, BoardColours Dark)
{
    /// <summary>The look of this theme.</summary>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="theme"/> is none of the two.</exception>
    public BoardColours this[Theme theme] => theme switch
    {
        Theme.Light => Light,
        Theme.Dark => Dark,
        _ => throw new ArgumentOutOfRangeException(nameof(theme), theme, "A theme is light or dark."),
    };
}
