using Companion.Engine.Proofs;

namespace Companion.Engine.Rules.Nets;

/// <summary>
/// Looks for nets of singles: candidates which, once supposed, lead by singles to a dead end. Tries nets of no step, of one, of two
/// and so on, so that the first one that it comes to has the fewest steps.
/// </summary>
internal sealed class NetSearch
{
    [ThreadStatic]
    private static NetSearch? _ofThread;

    private readonly NetGraph _graph = new();
    private readonly NetTrial _trial = new();
    private readonly NetTrial _help = new();
    private readonly Lock _lock = new();
    private readonly List<Refuted> _refuted = [];

    // The trials that were begun, and the nets that were found, by the number of the trial: trials go by the steps, then by the candidate.
    private readonly Dictionary<int, NetParts> _parts = [];
    private readonly SortedList<int, Candidate[]> _nets = [];
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
        _parts.Clear();
        _nets.Clear();
        _refuted.Clear();
        _end = int.MaxValue;
        var refuted = new SharedWork();
        if (found.Cores > 1)
            TwoCores.Run(Work, Help);
        else
            Work();
        foreach (var (number, steps) in _nets)
        {
            if (found.IsFull || !found.Add(Net.OfSingles(board, _graph[RefutedOf(number).Candidate], steps).Deduce(rule)))
                return;
        }

        void Work()
        {
            refuted.Do(CollectRefuted);
            TryAll(_trial);
        }

        void Help()
        {
            _help.Begin(_graph);
            refuted.Await();
            TryAll(_help);
        }
    }

    private void CollectRefuted()
    {
        for (var candidate = 0; candidate < _graph.Count && !_found.IsFull; candidate++)
        {
            if (_trial.RoundsFrom(candidate) is { } rounds)
                _refuted.Add(new(candidate, rounds));
        }
    }

    private Refuted RefutedOf(int number) => _refuted[number % _refuted.Count];

    private int StepsOf(int number) => number / _refuted.Count;

    // Makes one trial after another, with whoever makes them too, until there is a net.
    private void TryAll(NetTrial trial)
    {
        for (var number = 0; _refuted.Count > 0 && !IsOff(number); number++)
        {
            if (number % _refuted.Count == 0)
                CountSteps(trial, StepsOf(number));
            if (RefutedOf(number).TakesMoreThan(StepsOf(number)))
                continue;
            var parts = PartsOf(number);
            if (parts.AreTaken)
                continue;
            if (trial.Refutes(RefutedOf(number).Candidate, StepsOf(number), parts))
                Keep(number, parts, trial);
            parts.Close();
        }
    }

    private bool IsOff(int number) => Volatile.Read(ref _end) <= number || _found.IsFull;

    private void CountSteps(NetTrial trial, int steps)
    {
        foreach (var refuted in _refuted)
            refuted.CountSteps(trial, steps);
    }

    private NetParts PartsOf(int number)
    {
        lock (_lock)
        {
            if (!_parts.TryGetValue(number, out var parts))
                _parts.Add(number, parts = new(() => IsOff(number)));
            return parts;
        }
    }

    // Nets of more steps, or after as many as are wanted, go again.
    private void Keep(int number, NetParts parts, NetTrial trial)
    {
        lock (_lock)
        {
            if (number >= _end || !parts.Finds(trial.Part))
                return;
            _nets[number] = [.. trial.Path.Select(step => _graph[step])];
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
        private readonly SharedWork _count = new();
        private int _least;

        public int Candidate => candidate;

        // Landmarks ask for more steps than rounds do, and take longer: they are counted when its turn comes, by one of the two searches.
        public void CountSteps(NetTrial trial, int steps)
        {
            if (rounds <= steps && _least == 0)
                Count(trial);
        }

        public bool TakesMoreThan(int steps)
        {
            if (rounds > steps)
                return true;
            _count.Await();
            return _least > steps;
        }

        private void Count(NetTrial trial) => _count.Do(() => _least = Math.Max(rounds, trial.LeastSteps(candidate)));
    }
}
