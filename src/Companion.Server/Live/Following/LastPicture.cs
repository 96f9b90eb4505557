using Companion.Sight;

namespace Companion.Server.Live.Following;

/// <summary>
/// The last picture that a page has sent, in memory alone, so that it need not send again what has not changed. It may be told to
/// forget at any time.
/// </summary>
internal sealed class LastPicture
{
    private readonly Lock _lock = new();
    private (int Number, Frame Frame)? _last;

    /// <summary>Puts a picture together; it is the last one from then on.</summary>
    /// <param name="sent">What was sent.</param>
    /// <returns>The whole picture; null where it is a change of another one than the last.</returns>
    /// <exception cref="FormatException">What was sent lies outside the picture, or is none.</exception>
    public Frame? Take(SentPicture sent)
    {
        lock (_lock)
        {
            if (sent.Of is { } of && _last?.Number != of)
                return null;
            var frame = sent.Of is null
                ? sent.Part ?? throw new FormatException(ScreenSentences.NoPicture)
                : sent.Part is null ? _last!.Value.Frame : Pasted(_last!.Value.Frame, sent.Part, sent.Left, sent.Top);
            _last = (sent.Number, frame);
            return frame;
        }
    }

    /// <summary>Forgets it.</summary>
    public void Forget()
    {
        lock (_lock)
            _last = null;
    }

    private static Frame Pasted(Frame whole, Frame part, int left, int top)
    {
        if (left < 0 || top < 0 || left > whole.Width - part.Width || top > whole.Height - part.Height)
            throw new FormatException(ScreenSentences.NoPicture);
        var pixels = whole.Pixels.ToArray();
        for (var row = 0; row < part.Height; row++)
        {
            part.Pixels.Slice(4 * row * part.Width, 4 * part.Width)
                .CopyTo(pixels.AsSpan(4 * ((top + row) * whole.Width + left)));
        }

        return new(whole.Width, whole.Height, pixels);
    }
}
