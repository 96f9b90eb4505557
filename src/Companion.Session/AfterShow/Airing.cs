using System.Collections.Immutable;
using Companion.Session.Events;
using Companion.Session.Shows;
using Companion.Session.State;

namespace Companion.Session.AfterShow;

/// <summary>A deduction that was on air, from when it first was until it was cleared or another one took its place.</summary>
/// <param name="At">The time in the video.</param>
/// <param name="First">The moment at which it was put on air.</param>
/// <param name="Fullest">The moment at which the most of it was on air.</param>
/// <param name="Cue">The deduction, its board and the highest grade that was on air.</param>
/// <param name="IsFeatured">Whether its rule was to be shown.</param>
public sealed record Airing(TimeSpan At, Moment First, Moment Fullest, Cue Cue, bool IsFeatured)
{
    /// <summary>All of a show, in order; what the recording did not have is left out.</summary>
    /// <param name="show">The show.</param>
    public static ImmutableArray<Airing> Of(StoredShow show)
    {
        ArgumentNullException.ThrowIfNull(show);
        var airings = new List<Airing>();
        Airing? now = null;
        foreach (var moment in show.Moments)
        {
            if (moment.State.OnAir is not { } cue)
            {
                now = null;
            }
            else if (now is not null && now.Cue.Deduction.Equals(cue.Deduction))
            {
                if (cue.Grade <= now.Cue.Grade)
                    continue;
                now = now with { Fullest = moment, Cue = cue };
                airings[^1] = now;
            }
            else if (moment.Happened is PutOnAir && VideoTime.Of(show, moment) is { } at)
            {
                now = new(at, moment, moment, cue, moment.State.Plan.Featured.Any(feature => feature.Rule == cue.Deduction.Rule));
                airings.Add(now);
            }
        }

        return [.. airings];
    }
}
