using Companion.Engine.Proofs;

namespace Companion.Engine.Rules.Nets;

/// <summary>
/// Looks for nets of singles: candidates which, once supposed, lead by singles to a dead end. Tries nets of no step, of one, of two
/// and so on, so that the first one that it comes to has the fewest steps.
/// </summary>
internal sealed class NetSearch
{
    // From here on, in boards tried, a second core is worth its while.
    private const int Long = 100;

    [ThreadStatic]
    private static NetSearch? _ofThread;

    private readonly NetGraph _graph = new();
    private readonly NetTrial _trial = new();
    private readonly NetTrial _help = new();
    private readonly Lock _lock = new();
    private readonly List<Refuted> _refuted = [];

    // The nets that were found, by the number of the trial: trials go by the steps, then by the candidate.
    private readonly SortedList<int, Candidate[]> _nets = [];
    private int _next;
    private int _end;
    private Findings _found = null!;

    /// <summary>Adds a net for each candidate that is refuted by a net of so few steps that no candidate is by fewer.</summary>
    internal static void Find(RuleId rule, Board board, Findings found)
    {
        _ofThread ??= new();
        _ofThread.FindAll(rule, board, found);
    }

    private void FindAll(RuleId rule, Board board, Findings found)
    {
        _found = found;
        _graph.Read(board);
        if (!_trial.Begin(_graph))
            return;
        CollectRefuted();
        if (_refuted.Count == 0)
            return;
        _nets.Clear();
        (_next, _end) = (0, int.MaxValue);
        TryAll(_trial, found.Cores > 1 ? Long : int.MaxValue);
        if (_next < _end && !found.IsFull)
        {
            _help.Begin(_graph);
            TwoCores.Run(() => TryAll(_trial, int.MaxValue), () => TryAll(_help, int.MaxValue));
        }

        foreach (var (number, steps) in _nets)
        {
            if (found.IsFull || !found.Add(Net.OfSingles(board, _graph[RefutedOf(number).Candidate], steps).Deduce(rule)))
                return;
        }
    }

    private void CollectRefuted()
    {
        _refuted.Clear();
        for (var candidate = 0; candidate < _graph.Count && !_found.IsFull; candidate++)
        {
            if (_trial.RoundsFrom(candidate) is { } rounds)
                _refuted.Add(new(candidate, rounds));
        }
    }

    private Refuted RefutedOf(int number) => _refuted[number % _refuted.Count];

    private int StepsOf(int number) => number / _refuted.Count;

    // Makes one trial after another until there is a net, or so much was tried.
    private void TryAll(NetTrial trial, int most)
    {
        while (trial.Tried < most && Take() is { } number)
        {
            var refuted = RefutedOf(number);
            if (refuted.CountSteps(trial) <= StepsOf(number)
                && trial.Refutes(refuted.Candidate, StepsOf(number), () => _found.IsFull || Volatile.Read(ref _end) <= number))
            {
                Keep(number, trial.Path);
            }
        }
    }

    private int? Take()
    {
        lock (_lock)
        {
            while (_next < _end && !_found.IsFull)
            {
                var number = _next++;
                if (RefutedOf(number).LeastSteps <= StepsOf(number))
                    return number;
            }

            return null;
        }
    }

    // Nets of more steps, or after as many as are wanted, go again.
    private void Keep(int number, IReadOnlyList<int> path)
    {
        lock (_lock)
        {
            if (number >= _end)
                return;
            _nets.Add(number, [.. path.Select(step => _graph[step])]);
            DropFrom(Math.Min(_end, (StepsOf(number) + 1) * _refuted.Count));
            if (_nets.Count >= _found.Wanted)
                DropFrom(_nets.GetKeyAtIndex(_found.Wanted - 1) + 1);
        }
    }

    private void DropFrom(int end)
    {
        Volatile.Write(ref _end, end);
        while (_nets.Count > 0 && _nets.GetKeyAtIndex(_nets.Count - 1) >= end)
            _nets.RemoveAt(_nets.Count - 1);
    }

    // A candidate that is refuted, and of how many steps a net is at least that does so.
    private sealed class Refuted(int candidate, int rounds)
    {
        private bool _isCounted;

        public int Candidate => candidate;

        public int LeastSteps { get; private set; } = rounds;

        // Landmarks ask for more steps than rounds do, and take longer: they are counted when its turn comes.
        public int CountSteps(NetTrial trial)
        {
            if (!_isCounted)
                LeastSteps = Math.Max(LeastSteps, trial.LeastSteps(Candidate));
            _isCounted = true;
            return LeastSteps;
        }
    }
}
