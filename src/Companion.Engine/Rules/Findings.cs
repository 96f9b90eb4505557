using System.Collections;
using Companion.Engine.Proofs;

namespace Companion.Engine.Rules;

/// <summary>
/// What rules have found, in the order found. The caller sets how many it wants, and may want no more at any time.
/// </summary>
/// <param name="limit">How many deductions are wanted; all by default.</param>
/// <param name="cancel">When signalled, no more are wanted: a rule that takes long looks again and again.</param>
public sealed class Findings(int limit = int.MaxValue, CancellationToken cancel = default) : IReadOnlyList<Deduction>
{
    private readonly List<Deduction> _found = [];

    /// <summary>How many were found.</summary>
    public int Count => _found.Count;

    /// <summary>How many cores a last resort may take, one or two; what it finds is the same. One by default.</summary>
    public int Cores { get; init; } = 1;

    /// <summary>How many more are wanted.</summary>
    internal int Wanted => limit - Count;

    /// <summary>Whether no more are wanted: there are enough, or the caller has called it off.</summary>
    public bool IsFull => _found.Count >= limit || cancel.IsCancellationRequested;

    /// <summary>The deduction at this place, 0-based.</summary>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="index"/> is out of range.</exception>
    public Deduction this[int index] => _found[index];

    /// <summary>Adds a deduction.</summary>
    /// <returns>Whether more are wanted; a rule returns at false.</returns>
    public bool Add(Deduction deduction)
    {
        _found.Add(deduction);
        return !IsFull;
    }

    /// <summary>In the order found.</summary>
    public IEnumerator<Deduction> GetEnumerator() => _found.GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}
