using Companion.Session.Commands;
using Companion.Session.Planning;
using Companion.Session.Scanning;
using Companion.Session.State;

namespace Companion.Server.Live.Loop;

/// <summary>All that is worked out beside the session: the scan of a board first, and what takes longer after it.</summary>
/// <param name="Scans">Find what is open.</param>
/// <param name="Outlooks">Forecast the featured rules.</param>
/// <param name="Proofs">Prove entries.</param>
/// <param name="Plans">Plan the way on.</param>
internal sealed record LateWorks(
    LateWork<ScanResult> Scans, LateWork<Outlook> Outlooks, LateWork<AttributeEntry> Proofs, LateWork<PlannedWay> Plans)
{
    /// <summary>Begins anew with another board. Never waits.</summary>
    /// <param name="state">The state.</param>
    public void Begin(SessionState state)
    {
        Outlooks.Cancel();
        Proofs.Cancel();
        Plans.Cancel();
        Scans.Start(state);
    }

    /// <summary>Goes on once the scan is finished. Never waits.</summary>
    /// <param name="state">The newest state, for which the scan holds.</param>
    public void GoOn(SessionState state)
    {
        LookAhead(state);
        Proofs.Start(state);
    }

    /// <summary>Looks ahead again: what the puzzle is still to show has changed. Never waits.</summary>
    /// <param name="state">The newest state.</param>
    public void LookAhead(SessionState state)
    {
        Outlooks.Start(state);
        Plans.Start(state);
    }
}
