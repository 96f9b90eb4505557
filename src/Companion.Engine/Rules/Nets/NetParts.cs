namespace Companion.Engine.Rules.Nets;

/// <summary>
/// The parts of one trial, which two searches make together: both go through the same parts in the same order, and each takes those
/// that the other has not. The net that counts is that of the first part that has one, so that it is the same for one search and for two.
/// </summary>
/// <param name="isOff">Asked again and again whether nobody wants to know any more.</param>
internal sealed class NetParts(Func<bool> isOff)
{
    private int _next;
    private int _first = int.MaxValue;

    /// <summary>Whether all parts are taken, so that a search that comes now need not begin.</summary>
    internal bool AreTaken { get; private set; }

    /// <summary>Takes a part, unless the other search did; a search asks for part 0, 1, 2 and so on.</summary>
    internal bool Takes(int part) =>
        Volatile.Read(ref _next) == part && Interlocked.CompareExchange(ref _next, part + 1, part) == part;

    /// <summary>Notes that a search has gone through all parts.</summary>
    internal void Close() => AreTaken = true;

    /// <summary>Whether this part is not wanted any more: an earlier one has a net.</summary>
    internal bool IsOff(int part) => Volatile.Read(ref _first) < part || isOff();

    /// <summary>Notes that this part has a net; one search notes it at a time.</summary>
    /// <returns>Whether it counts: no earlier one has.</returns>
    internal bool Finds(int part)
    {
        if (part >= _first)
            return false;
        Volatile.Write(ref _first, part);
        return true;
    }
}
