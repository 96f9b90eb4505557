using Companion.Session.State;

namespace Companion.Session.Proving;

/// <summary>Tells which entries are still to be attributed.</summary>
public static class Due
{
    /// <summary>
    /// The claims of entries that stand and are not attributed yet, the oldest first. One whose list is still being written is not
    /// due, and neither is one that was taken back; made again, it is.
    /// </summary>
    /// <param name="state">The state.</param>
    public static IReadOnlyList<Claim> Of(SessionState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        var done = state.Attributions.Select(attributed => attributed.Entry).ToHashSet();
        var writing = state.Writing.IsEmpty ? null : state.History.Last;
        return [.. Claim.Of(state)
            .Where(claim => claim.IsProvable && claim.Step != writing && !done.Contains(claim.Step.Number))
            .Reverse()];
    }
}
