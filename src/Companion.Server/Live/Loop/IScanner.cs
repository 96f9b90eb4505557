using Companion.Session.Scanning;
using Companion.Session.State;

namespace Companion.Server.Live.Loop;

/// <summary>Finds what is open in a state; costly, and so kept off the session's loop.</summary>
internal interface IScanner
{
    /// <summary>Scans a state.</summary>
    /// <param name="state">The state.</param>
    /// <param name="previous">The last finished scan, or null.</param>
    /// <param name="cancel">Signalled when the result is no longer wanted.</param>
    /// <exception cref="OperationCanceledException"><paramref name="cancel"/> was signalled.</exception>
    ScanResult Scan(SessionState state, ScanResult? previous, CancellationToken cancel);
}
