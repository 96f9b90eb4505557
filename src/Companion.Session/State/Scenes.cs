using System.Collections;
using System.Collections.Immutable;

namespace Companion.Session.State;

/// <summary>Where the board lies in each scene of the broadcast. Immutable, compared by value.</summary>
public sealed class Scenes : IReadOnlyCollection<KeyValuePair<string, Frame>>, IEquatable<Scenes>
{
    /// <summary>The scene that is always there.</summary>
    public const string Main = "main";

    private readonly ImmutableSortedDictionary<string, Frame> _frames;

    private Scenes(ImmutableSortedDictionary<string, Frame> frames) => _frames = frames;

    /// <summary>
    /// The scene <see cref="Main"/> alone, with a square board of nine tenths of the height in the middle of a 16:9 picture.
    /// </summary>
    public static Scenes Initial { get; } = new(
        ImmutableSortedDictionary.Create<string, Frame>(StringComparer.Ordinal).Add(Main, Frame.Centred(height: 0.9)));

    /// <summary>How many scenes there are, at least 1.</summary>
    public int Count => _frames.Count;

    /// <summary>The board's place in the scene, or null where there is no such scene.</summary>
    public Frame? this[string scene] => _frames.GetValueOrDefault(scene);

    /// <summary>With the board's place set in a scene, which is made if it is new.</summary>
    public Scenes Place(string scene, Frame frame) => new(_frames.SetItem(scene, frame));

    /// <summary>Without a scene; <see cref="Main"/> stays.</summary>
    public Scenes Forget(string scene) => scene == Main ? this : new(_frames.Remove(scene));

    /// <inheritdoc/>
    public bool Equals(Scenes? other) => other is not null && _frames.SequenceEqual(other._frames);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as Scenes);

    /// <inheritdoc/>
    public override int GetHashCode() => _frames.Aggregate(0, HashCode.Combine);

    /// <summary>By name.</summary>
    public IEnumerator<KeyValuePair<string, Frame>> GetEnumerator() => _frames.GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}
