using System.Collections.Concurrent;
using Companion.Session.State;

namespace Companion.Server.Live.Overlay;

/// <summary>
/// The scenes that some overlay page was opened for. A page goes on being served when its scene is forgotten, or not placed yet.
/// </summary>
internal sealed class ScenesShown
{
    // Far more scenes than a broadcast has; a page with a name beyond it is served as the main scene.
    private const int Most = 100;

    private readonly ConcurrentDictionary<string, byte> _names = new([new(Scenes.Main, 0)]);

    /// <summary>Their names.</summary>
    public ICollection<string> Names => _names.Keys;

    /// <summary>Adds the scene of a page.</summary>
    /// <param name="asked">The name in the page's address; may be null or anything.</param>
    /// <returns>The scene that the page is served as.</returns>
    public string Add(string? asked)
    {
        var name = asked is { Length: > 0 and <= 40 } && (_names.ContainsKey(asked) || _names.Count < Most) ? asked : Scenes.Main;
        _names.TryAdd(name, 0);
        return name;
    }
}
