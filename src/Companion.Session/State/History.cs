using System.Collections.Immutable;

namespace Companion.Session.State;

/// <summary>The entries that stand and the entries taken back, both without end. Immutable, compared by value.</summary>
public sealed class History : IEquatable<History>
{
    // Shared tails: an entry costs one node, whatever came before it.
    private readonly ImmutableStack<Step> _made;
    private readonly ImmutableStack<Step> _undone;

    private History(ImmutableStack<Step> made, ImmutableStack<Step> undone) => (_made, _undone) = (made, undone);

    /// <summary>Nothing done.</summary>
    public static History Empty { get; } = new([], []);

    /// <summary>The entries that stand, the last first. Each holds the grid before it.</summary>
    public IEnumerable<Step> Made => _made;

    /// <summary>The entries that can be made again, the next first. Each holds the grid after it.</summary>
    public IEnumerable<Step> Undone => _undone;

    /// <summary>The entry that an undo takes back, or null.</summary>
    public Step? Last => _made.IsEmpty ? null : _made.Peek();

    /// <summary>The entry that a redo makes again, or null. It holds the grid after it.</summary>
    public Step? Next => _undone.IsEmpty ? null : _undone.Peek();

    /// <summary>With an entry made; what was taken back before can no longer be made again.</summary>
    public History Make(Step step) => new(_made.Push(step), []);

    /// <summary>With the last entry taken back.</summary>
    /// <param name="after">The grid that it had led to.</param>
    /// <param name="writing">The cells being written then.</param>
    /// <exception cref="InvalidOperationException">There is no entry.</exception>
    public History Undo(Grid after, Engine.CellSet writing) =>
        new(_made.Pop(out var step), _undone.Push(step with { Grid = after, Writing = writing }));

    /// <summary>With the entry taken back last made again.</summary>
    /// <param name="before">The grid that it starts from.</param>
    /// <param name="writing">The cells being written then.</param>
    /// <exception cref="InvalidOperationException">There is no such entry.</exception>
    public History Redo(Grid before, Engine.CellSet writing)
    {
        var undone = _undone.Pop(out var step);
        return new(_made.Push(step with { Grid = before, Writing = writing }), undone);
    }

    /// <inheritdoc/>
    public bool Equals(History? other) =>
        other is not null && (ReferenceEquals(this, other)
            || (_made.SequenceEqual(other._made) && _undone.SequenceEqual(other._undone)));

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as History);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Last, Next);
}
