namespace Companion.Session.Recording;

/// <summary>A stretch of time that was recorded without a pause.</summary>
/// <param name="From">When it began.</param>
/// <param name="To">When it ended, or null where it still goes on.</param>
public sealed record RecordedRun(DateTimeOffset From, DateTimeOffset? To)
{
    /// <summary>How much of it had been recorded at a time; zero before it.</summary>
    /// <param name="at">The time.</param>
    /// <remarks>A clock that is set back while it runs makes it shorter and never negative.</remarks>
    public TimeSpan Until(DateTimeOffset at)
    {
        var length = (To is { } to && to < at ? to : at) - From;
        return length > TimeSpan.Zero ? length : TimeSpan.Zero;
    }

    /// <summary>Whether it was being recorded at a time; both ends belong to it.</summary>
    /// <param name="at">The time.</param>
    public bool Holds(DateTimeOffset at) => at >= From && !(To < at);
}
