using Companion.Session.Scanning;
using Companion.Session.Shows;

namespace Companion.Session.AfterShow.Recaps;

/// <summary>How much was open at a time.</summary>
/// <param name="At">From when on, in the video.</param>
/// <param name="Deductions">How many deductions were open.</param>
/// <param name="BivalueCells">How many cells had two candidates left.</param>
public sealed record Openness(TimeSpan At, int Deductions, int BivalueCells)
{
    /// <summary>
    /// The course of a show. Where the grid could not be scanned, as after a slip that breaks it, what was known last is carried on: a
    /// fall or a gap would give the slip away.
    /// </summary>
    /// <param name="show">The show.</param>
    /// <param name="scans">The scans of one of its puzzles.</param>
    internal static IEnumerable<Openness> Of(StoredShow show, IEnumerable<(Moment Moment, ScanResult Scan)> scans)
    {
        Openness? last = null;
        foreach (var (moment, scan) in scans)
        {
            var at = VideoTime.Near(show, moment);
            last = scan.Known is { } known ? new(at, scan.Open.Length, known.Open.Count(cell => known[cell].Count == 2)) : last is null ? null : last with { At = at };
            if (last is not null)
                yield return last;
        }
    }
}
