using System.Collections;
using Companion.Engine.Proofs;

namespace Companion.Engine.Rules;

/// <summary>What rules have found, in the order found. The caller sets how many it wants.</summary>
/// <param name="limit">How many deductions are wanted; all by default.</param>
public sealed class Findings(int limit = int.MaxValue) : IReadOnlyList<Deduction>
{
    private readonly List<Deduction> _found = [];

    /// <summary>How many were found.</summary>
    public int Count => _found.Count;

    /// <summary>Whether no more are wanted.</summary>
    public bool IsFull => _found.Count >= limit;

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
