using System.Collections.Immutable;
using Companion.Session.Shows;
using Companion.Session.State;

namespace Companion.Server.Live.Replay;

/// <summary>What a page needs to play a stored show: the moments at which something on the stage changes.</summary>
/// <param name="Title">The show's title; may be empty.</param>
/// <param name="Events">How many events the show has.</param>
/// <param name="Moments">The moments, the first event's first.</param>
internal sealed record Timeline(string Title, int Events, ImmutableArray<Timeline.Mark> Moments)
{
    /// <summary>The timeline of a show.</summary>
    /// <param name="show">The show.</param>
    public static Timeline Of(StoredShow show)
    {
        var marks = ImmutableArray.CreateBuilder<Mark>();
        SessionState? before = null;
        foreach (var moment in show.Moments)
        {
            if (before is null || !LooksAlike(before, moment.State))
                marks.Add(new(moment.Number, Math.Round(moment.Elapsed.TotalSeconds, 3), moment.Recorded is { } at ? Math.Round(at.TotalSeconds, 3) : null));
            before = moment.State;
        }

        return new(show.Title, show.Events.Length, marks.ToImmutable());
    }

    private static bool LooksAlike(SessionState one, SessionState other) =>
        one.Grid.Equals(other.Grid) && one.OnAir == other.OnAir && one.CalledOnAir == other.CalledOnAir;

    /// <summary>A moment.</summary>
    /// <param name="Number">The number of the event that led to it, 1-based.</param>
    /// <param name="At">Seconds since the show began.</param>
    /// <param name="Recorded">Seconds into the recording, or null where it was not recorded.</param>
    internal sealed record Mark(int Number, double At, double? Recorded);
}
