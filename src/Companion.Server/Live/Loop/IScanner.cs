using Companion.Session.Scanning;
using Companion.Session.State;

namespace Companion.Server.Live.Loop;

/// <summary>Finds what is open in a state; costly, and so kept off the session's loop.</summary>
internal interface IScanner
{
    /// <summary>Scans a state part by part: each result holds all that was found so far.</summary>
    /// <param name="state">The state.</param>
    /// <param name="previous">The last result that went on to searches at least, or null.</param>
    /// <param name="cancel">Signalled when the result is no longer wanted.</param>
    /// <exception cref="OperationCanceledException"><paramref name="cancel"/> was signalled.</exception>
    IEnumerable<ScanResult> Scan(SessionState state, ScanResult? previous, CancellationToken cancel);
}
