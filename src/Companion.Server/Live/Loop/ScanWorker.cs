using Companion.Engine.Rules;
using Companion.Session.Scanning;
using Companion.Session.State;

namespace Companion.Server.Live.Loop;

/// <summary>Finds what is open, part by part: each result holds all that was found so far.</summary>
/// <param name="ladder">The whole ladder.</param>
internal sealed class ScanWorker(Ladder ladder) : IWorker<ScanResult>
{
    private ScanResult? _previous;

    /// <inheritdoc/>
    public IEnumerable<ScanResult> WorkOut(SessionState state, CancellationToken cancel)
    {
        foreach (var part in Scan.InParts(state, ladder, _previous, cancel))
        {
            if (part.Reached >= Effort.Search)
                _previous = part;
            yield return part;
        }
    }
}
