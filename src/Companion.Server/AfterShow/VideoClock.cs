using System.Globalization;

namespace Companion.Server.AfterShow;

/// <summary>Times of a video as they are written.</summary>
internal static class VideoClock
{
    /// <summary>As in a list of chapters: <c>4:05</c>, <c>1:04:05</c>; part of a second is cut off.</summary>
    /// <param name="time">The time, not negative.</param>
    public static string Of(TimeSpan time) => time.TotalHours >= 1
        ? string.Create(CultureInfo.InvariantCulture, $"{(int)time.TotalHours}:{time.Minutes:00}:{time.Seconds:00}")
        : string.Create(CultureInfo.InvariantCulture, $"{time.Minutes}:{time.Seconds:00}");

    /// <summary>Reads <c>4:05</c>, <c>1:04:05.5</c> or seconds as <c>245</c>.</summary>
    /// <param name="text">What to read.</param>
    /// <returns>The time, or null where the text is none.</returns>
    public static TimeSpan? Read(string text)
    {
        var parts = text.Split(':');
        var seconds = 0.0;
        if (parts.Length > 3)
            return null;
        foreach (var part in parts)
        {
            if (!double.TryParse(part, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var value) || value > 1e6)
                return null;
            seconds = 60 * seconds + value;
        }

        return TimeSpan.FromSeconds(seconds);
    }
}
