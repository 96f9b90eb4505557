namespace Companion.Session.AfterShow;

/// <summary>Words that stand under a video for some time.</summary>
/// <param name="From">From when on, in the video.</param>
/// <param name="To">Until when; later than <paramref name="From"/>.</param>
/// <param name="Text">The words, one line.</param>
public sealed record Caption(TimeSpan From, TimeSpan To, string Text)
{
    // Of a call-out of 12 words it is asked that it stands 4.5 s: 160 words a minute, the slower end of what is advised for radio
    // (E. Rodero 2012, abstract).
    private const double SecondsForEachWord = 4.5 / 12;

    /// <summary>How long any words stand at least: a single word is not found sooner by eyes that are elsewhere. Common practice.</summary>
    public static TimeSpan Least { get; } = TimeSpan.FromSeconds(1.5);

    /// <summary>How long words have to stand to be read.</summary>
    /// <param name="text">The words.</param>
    public static TimeSpan ReadingTime(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var words = text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries).Length;
        return TimeSpan.FromMilliseconds(Math.Ceiling(1000 * Math.Max(Least.TotalSeconds, words * SecondsForEachWord)));
    }
}
