using System.Runtime.InteropServices;
using Companion.Engine.Rules.Chains;

namespace Companion.Engine.Rules.Nets;

/// <summary>
/// Steps made on a walk, with what each needs, so that those can be told that a dead end needs. A step places a single or takes a
/// candidate out.
/// </summary>
/// <param name="graph">The board.</param>
/// <param name="walk">Where the steps are made.</param>
internal sealed class NetSteps(NetGraph graph, NetWalk walk)
{
    private const int Supposed = -1;

    private readonly List<Step> _steps = [];
    private readonly List<int> _needs = [];
    private readonly List<int> _within = [];
    private readonly List<int> _deadEnds = [];

    // By which step each candidate was taken out; of those that were gone before the supposition, nothing.
    private readonly int[] _takenBy = new int[Candidate.Count];
    private readonly bool[] _isMarked = new bool[Candidate.Count];
    private int _start;

    /// <summary>A step.</summary>
    /// <param name="Candidate">What is placed or goes.</param>
    /// <param name="Places">Whether it is placed.</param>
    /// <param name="FirstNeed">Where its needs begin,</param>
    /// <param name="Needs">and how many there are.</param>
    /// <param name="FirstWithin">Where the singles begin that refute what goes,</param>
    /// <param name="Within">and how many there are.</param>
    internal readonly record struct Step(int Candidate, bool Places, int FirstNeed, int Needs, int FirstWithin, int Within)
    {
        /// <summary>How many steps it counts for.</summary>
        internal int Weight => Within + 1;
    }

    /// <summary>The steps that the dead end found last needs, in order.</summary>
    internal List<Step> Needed { get; } = [];

    /// <summary>What the dead end found last and its steps need that was gone before the supposition.</summary>
    internal List<int> NeededBefore { get; } = [];

    /// <summary>How many steps the dead end found last needs, by their weight.</summary>
    internal int Length { get; private set; }

    /// <summary>The singles that refute what goes by a step.</summary>
    internal ReadOnlySpan<int> SinglesWithin(Step step) =>
        CollectionsMarshal.AsSpan(_within).Slice(step.FirstWithin, step.Within);

    /// <summary>Starts with a candidate that is supposed to be true.</summary>
    internal void Suppose(int candidate)
    {
        _steps.Clear();
        _needs.Clear();
        _within.Clear();
        _start = walk.Gone.Length;
        walk.Place(candidate);
        Label(_start, Supposed);
    }

    /// <summary>Places a single.</summary>
    internal void Place(int single)
    {
        var first = _needs.Count;
        foreach (var choice in graph.ChoicesOf(single))
        {
            if (!walk.HasOneLeft(choice))
                continue;
            AddMembers(choice, but: single);
            break;
        }

        var before = walk.Gone.Length;
        _steps.Add(new(single, Places: true, first, _needs.Count - first, 0, 0));
        walk.Place(single);
        Label(before, _steps.Count - 1);
    }

    /// <summary>Takes a candidate out that other steps refute.</summary>
    /// <param name="candidate">The candidate.</param>
    /// <param name="others">The other steps, within a supposition of its own.</param>
    internal void Remove(int candidate, NetSteps others)
    {
        var first = _needs.Count;
        _needs.AddRange(others.NeededBefore);
        var before = walk.Gone.Length;
        _steps.Add(new(candidate, Places: false, first, _needs.Count - first, _within.Count, others.Needed.Count));
        foreach (var step in others.Needed)
            _within.Add(step.Candidate);
        walk.Remove(candidate);
        Label(before, _steps.Count - 1);
    }

    /// <summary>Of the dead ends that there are, finds the one that needs the fewest steps, and these.</summary>
    internal void Trace()
    {
        _deadEnds.Clear();
        walk.AddDeadEnds(_deadEnds);
        var (best, length) = (-1, int.MaxValue);
        foreach (var end in _deadEnds)
        {
            Trace(end);
            if (Length < length)
                (best, length) = (end, Length);
        }

        Trace(best);
    }

    private void Trace(int end)
    {
        var first = _needs.Count;
        AddMembers(end, but: -1);
        Needed.Clear();
        NeededBefore.Clear();
        _isMarked.AsSpan(0, _steps.Count).Clear();
        Mark(first, _needs.Count - first);
        _needs.RemoveRange(first, _needs.Count - first);
        Length = 0;
        for (var step = _steps.Count - 1; step >= 0; step--)
        {
            if (!_isMarked[step])
                continue;
            Needed.Add(_steps[step]);
            Length += _steps[step].Weight;
            Mark(_steps[step].FirstNeed, _steps[step].Needs);
        }

        Needed.Reverse();
    }

    private void Mark(int first, int count)
    {
        for (var need = first; need < first + count; need++)
        {
            var gone = _needs[need];
            if (!walk.WentSince(_start, gone))
                NeededBefore.Add(gone);
            else if (_takenBy[gone] >= 0)
                _isMarked[_takenBy[gone]] = true;
        }
    }

    private void AddMembers(int choice, int but)
    {
        foreach (var member in new SharedNodes(graph.Members(choice), graph.Members(choice)))
        {
            if (member != but)
                _needs.Add(member);
        }
    }

    private void Label(int from, int step)
    {
        var gone = walk.Gone;
        for (var at = from; at < gone.Length; at++)
            _takenBy[gone[at]] = step;
    }
}
