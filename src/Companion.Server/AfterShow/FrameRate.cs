using System.Collections.Immutable;

namespace Companion.Server.AfterShow;

/// <summary>Frames a second of a video.</summary>
/// <param name="Name">As it is called: <c>25</c>, <c>29.97</c>.</param>
/// <param name="Nominal">How many frames a second of timecode has.</param>
/// <param name="PerSecond">How many a second of time has.</param>
internal sealed record FrameRate(string Name, int Nominal, double PerSecond)
{
    /// <summary>Those that there are. Those below a whole number are 1000/1001 of it (SMPTE ST 12-1).</summary>
    public static ImmutableArray<FrameRate> All { get; } =
    [
        new("25", 25, 25), new("24", 24, 24), new("30", 30, 30), new("50", 50, 50), new("60", 60, 60),
        new("23.976", 24, 24000.0 / 1001), new("29.97", 30, 30000.0 / 1001), new("59.94", 60, 60000.0 / 1001),
    ];

    /// <summary>A time as timecode that drops no numbers: <c>HH:MM:SS:FF</c>.</summary>
    /// <param name="time">The time.</param>
    public string Timecode(TimeSpan time)
    {
        var frames = (long)Math.Round(time.TotalSeconds * PerSecond);
        var seconds = frames / Nominal;
        return FormattableString.Invariant($"{seconds / 3600:00}:{seconds / 60 % 60:00}:{seconds % 60:00}:{frames % Nominal:00}");
    }
}
