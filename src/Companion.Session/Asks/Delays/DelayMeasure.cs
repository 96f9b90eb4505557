using Companion.Session.Asks.Viewers;

namespace Companion.Session.Asks.Delays;

/// <summary>
/// Measures how far viewers are behind: a code comes up on the picture, they write it down where they write, and the time between
/// is the delay with what it takes them to read and type. It errs on the safe side.
/// </summary>
public sealed class DelayMeasure
{
    // More would change the middle one no more; and nobody fills our memory.
    private const int MostViewers = 200;

    // Nobody's picture is later than this; whoever writes the code after it has read it elsewhere.
    private static readonly TimeSpan Latest = TimeSpan.FromSeconds(120);

    private readonly Dictionary<ViewerId, double> _seconds = [];
    private string? _code;
    private DateTimeOffset _shownAt;

    /// <summary>How many viewers have been measured.</summary>
    public int Viewers => _seconds.Count;

    /// <summary>The middle one of what was measured, in whole seconds, with the least and the most; null before the first.</summary>
    public Delay? Measured
    {
        get
        {
            if (_seconds.Count == 0)
                return null;
            var sorted = _seconds.Values.Order().ToList();
            var middle = (sorted[(sorted.Count - 1) / 2] + sorted[sorted.Count / 2]) / 2;
            return new(Math.Min((int)Math.Ceiling(middle), Delay.MostSeconds), sorted[0], sorted[^1]);
        }
    }

    /// <summary>A code came up; what was measured with another one is forgotten.</summary>
    /// <param name="code">The code.</param>
    /// <param name="at">When.</param>
    public void Show(string code, DateTimeOffset at)
    {
        (_code, _shownAt) = (code, at);
        _seconds.Clear();
    }

    /// <summary>A viewer wrote a code. Each counts once, and only with the code that came up last.</summary>
    /// <param name="viewer">The viewer.</param>
    /// <param name="code">What was written.</param>
    /// <param name="at">When it came in.</param>
    public void Hear(ViewerId viewer, string code, DateTimeOffset at)
    {
        var delay = at - _shownAt;
        if (code == _code && delay >= TimeSpan.Zero && delay <= Latest && _seconds.Count < MostViewers)
            _seconds.TryAdd(viewer, delay.TotalSeconds);
    }

    /// <summary>Forgets who wrote and what was measured.</summary>
    public void Forget()
    {
        _code = null;
        _seconds.Clear();
    }
}
