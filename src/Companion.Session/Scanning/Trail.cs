using System.Collections.Immutable;
using Companion.Session.State;

namespace Companion.Session.Scanning;

/// <summary>
/// What the last entries carried out, handed on from scan to scan. An entry that came while a scan was cancelled is compared with
/// the last scan that was finished.
/// </summary>
public sealed class Trail
{
    /// <summary>How many of the last entries are kept.</summary>
    public const int Length = 20;

    private Trail(ImmutableArray<Carried> carried) => Carried = carried;

    /// <summary>No entry.</summary>
    public static Trail Empty { get; } = new([]);

    /// <summary>The entries that carried out an open deduction, oldest first.</summary>
    public ImmutableArray<Carried> Carried { get; }

    /// <summary>The trail with the entries made since a scan.</summary>
    /// <param name="state">The state to be scanned now.</param>
    /// <param name="previous">The last finished scan of the same puzzle.</param>
    internal static Trail Of(SessionState state, ScanResult previous)
    {
        var carried = previous.Trail.Carried.ToBuilder();
        var after = (state.Grid, state.Writing);
        var since = new List<Carried>();
        foreach (var step in state.History.Made.TakeWhile(step => step.Number > previous.Entries))
        {
            var change = Change.Between((step.Grid, step.Writing), after);
            if (previous.Open.FirstOrDefault(found => change.CarriesOut(found.Deduction)) is { } easiest)
                since.Add(new(step.Number, easiest.Deduction, easiest.Rung));
            after = (step.Grid, step.Writing);
        }

        since.Reverse();
        carried.AddRange(since);
        return new([.. carried.TakeLast(Length)]);
    }
}
