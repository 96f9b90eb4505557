using Companion.Engine.Rules;
using Companion.Session.Scanning;
using Companion.Session.State;

namespace Companion.Server.Live.Loop;

/// <summary>Scans with the rules of a ladder.</summary>
/// <param name="ladder">The ladder.</param>
internal sealed class LadderScanner(Ladder ladder) : IScanner
{
    /// <inheritdoc/>
    public IEnumerable<ScanResult> Scan(SessionState state, ScanResult? previous, CancellationToken cancel) =>
        Companion.Session.Scanning.Scan.InParts(state, ladder, previous, cancel);
}
