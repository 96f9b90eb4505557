using System.Collections.Immutable;
using Companion.Engine;
using Companion.Session.Asks.Delays;
using Companion.Session.Asks.Viewers;
using Companion.Session.State;

namespace Companion.Session.Asks.Calls;

/// <summary>Counts who says to have found what. A viewer's last call of a cell counts.</summary>
public sealed class CallBook
{
    /// <summary>How many calls are kept; what comes beyond them is not counted.</summary>
    public const int Most = 20_000;

    private readonly Dictionary<Cell, Dictionary<ViewerId, (Digit? Digit, DateTimeOffset At)>> _calls = [];
    private readonly Dictionary<Cell, DateTimeOffset> _placed = [];
    private readonly HashSet<Cell> _told = [];
    private int _count;
    private int _loading;
    private Solution? _solution;

    /// <summary>The loading of the puzzle that the calls are of.</summary>
    public int Loading => _loading;

    /// <summary>Shows the book the presenter's board. Another puzzle begins a new book.</summary>
    /// <param name="state">The state.</param>
    /// <param name="at">When it was shown.</param>
    public void Show(SessionState state, DateTimeOffset at)
    {
        ArgumentNullException.ThrowIfNull(state);
        if (state.Grid.Loading != _loading)
        {
            Clear();
            (_loading, _solution) = (state.Grid.Loading, state.Grid.Puzzle?.Solution);
        }

        foreach (var placed in state.Grid.Placed)
        {
            if (_solution?.Holds(placed) == true)
                _placed.TryAdd(placed.Cell, at);
        }
    }

    /// <summary>Counts a call.</summary>
    /// <param name="viewer">Who calls.</param>
    /// <param name="call">What.</param>
    /// <param name="at">When it came in.</param>
    public void Count(ViewerId viewer, AskCall call, DateTimeOffset at)
    {
        ArgumentNullException.ThrowIfNull(call);
        if (!_calls.TryGetValue(call.Cell, out var ofCell))
            _calls.Add(call.Cell, ofCell = []);
        if (ofCell.TryGetValue(viewer, out var before))
        {
            // To say the same again, or less, takes nothing away from having said it first.
            if (call.Digit is not null && before.Digit != call.Digit)
                ofCell[viewer] = (call.Digit, at);
        }
        else if (_count < Most)
        {
            _count++;
            ofCell.Add(viewer, (call.Digit, at));
        }
    }

    /// <summary>What was called, cell by cell in reading order.</summary>
    /// <param name="delay">How far viewers are behind.</param>
    public ImmutableArray<CellCalls> Cells(Delay delay) =>
        [.. _calls.Where(calls => calls.Value.Count > 0).OrderBy(calls => calls.Key).Select(calls => Of(calls.Key, [.. calls.Value.Values], delay))];

    /// <summary>When it is sure of the next cell who was first; null where no digit was placed since.</summary>
    /// <param name="delay">How far viewers are behind.</param>
    public DateTimeOffset? SureAt(Delay delay)
    {
        ArgumentNullException.ThrowIfNull(delay);
        var open = _placed.Where(placed => !_told.Contains(placed.Key)).Select(placed => (DateTimeOffset?)placed.Value).Min();
        return open?.AddSeconds(delay.Least);
    }

    /// <summary>The cells of which it came to be sure that viewers were first, each once.</summary>
    /// <param name="now">The time; calls that came until now are all that there will be of what was placed long enough ago.</param>
    /// <param name="delay">How far viewers are behind.</param>
    public IEnumerable<CalledCell> TakeFirst(DateTimeOffset now, Delay delay)
    {
        ArgumentNullException.ThrowIfNull(delay);
        var first = new List<CalledCell>();
        foreach (var (cell, placed) in _placed.Where(placed => now >= placed.Value.AddSeconds(delay.Least)).OrderBy(placed => placed.Key).ToList())
        {
            var right = !_told.Add(cell) || !_calls.TryGetValue(cell, out var calls) ? 0 : calls.Values.Count(call =>
                call.Digit is { } digit && _solution?.Holds(new(cell, digit)) == true && CallTiming.Of(placed, call.At, delay) == CallStanding.First);
            if (right > 0)
                first.Add(new(cell, CallBands.Of(right)));
        }

        return first;
    }

    /// <summary>Forgets all calls.</summary>
    public void Clear()
    {
        _calls.Clear();
        _placed.Clear();
        _told.Clear();
        _count = 0;
    }

    private CellCalls Of(Cell cell, List<(Digit? Digit, DateTimeOffset At)> calls, Delay delay)
    {
        var named = calls.Count(call => call.Digit is not null);
        var right = calls.Where(call => call.Digit is { } digit && _solution?.Holds(new(cell, digit)) == true).Select(call => call.At).ToList();
        if (right.Count == 0 || !_placed.TryGetValue(cell, out var placed))
            return new(cell, calls.Count, named, right.Count, null, null);
        var first = right.Min();
        return new(cell, calls.Count, named, right.Count, CallTiming.Of(placed, first, delay), (placed - first).TotalSeconds);
    }
}
