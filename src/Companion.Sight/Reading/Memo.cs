namespace Companion.Sight.Reading;

/// <summary>Keeps what was worked out for as long as it is asked for in every round.</summary>
/// <typeparam name="TKey">What it was worked out from.</typeparam>
/// <typeparam name="TValue">What was worked out.</typeparam>
internal sealed class Memo<TKey, TValue>
    where TKey : notnull
{
    private Dictionary<TKey, TValue> _before = [], _now = [];

    /// <summary>What is known, or else is worked out now.</summary>
    /// <param name="key">What from.</param>
    /// <param name="work">Works it out.</param>
    public TValue Of(TKey key, Func<TKey, TValue> work)
    {
        if (!_now.TryGetValue(key, out var value))
            _now[key] = value = _before.TryGetValue(key, out var known) ? known : work(key);
        return value;
    }

    /// <summary>Begins another round: what was not asked for in the last one is forgotten.</summary>
    public void Next()
    {
        (_before, _now) = (_now, _before);
        _now.Clear();
    }
}
