using System.Collections;
using System.Collections.Immutable;

namespace Companion.Session.State;

/// <summary>An immutable array that is equal to another with equal items in the same order. The default value is empty.</summary>
/// <typeparam name="T">What it holds.</typeparam>
public readonly struct ValueArray<T> : IReadOnlyList<T>, IEquatable<ValueArray<T>>
    where T : notnull
{
    private readonly ImmutableArray<T> _items;

    /// <summary>An array of these items.</summary>
    /// <param name="items">The items in order.</param>
    public ValueArray(ImmutableArray<T> items) => _items = items;

    /// <summary>The items in order.</summary>
    public ImmutableArray<T> Items => _items.IsDefault ? [] : _items;

    /// <summary>How many items it holds.</summary>
    public int Count => Items.Length;

    /// <summary>The item at this place, 0-based.</summary>
    /// <exception cref="IndexOutOfRangeException"><paramref name="index"/> is out of range.</exception>
    public T this[int index] => Items[index];

    /// <summary>Whether the items are equal one by one.</summary>
    public static bool operator ==(ValueArray<T> left, ValueArray<T> right) => left.Equals(right);

    /// <summary>Whether an item differs.</summary>
    public static bool operator !=(ValueArray<T> left, ValueArray<T> right) => !left.Equals(right);

    /// <summary>The array with an item added at its end.</summary>
    public ValueArray<T> Add(T item) => new(Items.Add(item));

    /// <inheritdoc/>
    public bool Equals(ValueArray<T> other) => Items.AsSpan().SequenceEqual(other.Items.AsSpan());

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is ValueArray<T> other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode()
    {
        var hash = default(HashCode);
        foreach (var item in Items)
            hash.Add(item);
        return hash.ToHashCode();
    }

    /// <inheritdoc/>
    public IEnumerator<T> GetEnumerator() => Items.AsEnumerable().GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}
