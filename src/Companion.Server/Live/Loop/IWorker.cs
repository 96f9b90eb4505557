using Companion.Session.State;

namespace Companion.Server.Live.Loop;

/// <summary>Works something out from a state of the session; costly, and so kept off the session's loop.</summary>
/// <typeparam name="T">What it finds.</typeparam>
internal interface IWorker<out T>
{
    /// <summary>Works it out, one finding after the other. Asked for one state at a time.</summary>
    /// <param name="state">The state.</param>
    /// <param name="cancel">Signalled when the findings are no longer wanted.</param>
    /// <exception cref="OperationCanceledException"><paramref name="cancel"/> was signalled.</exception>
    IEnumerable<T> WorkOut(SessionState state, CancellationToken cancel);
}
