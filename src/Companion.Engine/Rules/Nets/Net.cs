using Companion.Engine.Proofs;

namespace Companion.Engine.Rules.Nets;

/// <summary>
/// Follows what comes of a candidate that is supposed to be true, to a cell without a candidate or a digit without a place in a house:
/// then it was not true. Keeps only the steps that are needed.
/// </summary>
internal sealed class Net
{
    // Beside the numbers of steps, 0 and up.
    private const int Stands = -2;
    private const int Supposed = -1;

    private static readonly IRule[] Singles = [new HiddenSingle(), new FullHouse(), new NakedSingle()];

    private readonly Board _real;
    private readonly Candidate _supposed;
    private readonly List<Step> _steps = [];

    // By which step each candidate was taken out.
    private readonly int[] _takenBy = new int[Candidate.Count];
    private bool[] _isNeeded = [];
    private DeadEnd _end;

    /// <summary>Supposes a candidate.</summary>
    internal Net(Board real, Candidate supposed)
    {
        (_real, _supposed, Board) = (real, supposed, real);
        Array.Fill(_takenBy, Stands);
        Take(real.Place(supposed), Supposed);
    }

    // Needs: what had to be gone for it of the candidates that really stand. RestsOn: what is really absent.
    private readonly record struct Step(Deduction Deduction, CandidateSet Needs, CandidateSet RestsOn);

    /// <summary>The board after all steps so far.</summary>
    internal Board Board { get; private set; }

    /// <summary>How many steps are needed, once there is a dead end.</summary>
    internal int Length { get; private set; }

    /// <summary>The net in which these are placed one after another, each as a single.</summary>
    internal static Net OfSingles(Board board, Candidate supposed, ReadOnlySpan<Candidate> placed)
    {
        var net = new Net(board, supposed);
        foreach (var candidate in placed)
            net.Apply(net.SimplestSingle(candidate));
        if (!net.Ends())
            throw new InvalidOperationException($"{supposed} leads to no dead end.");
        return net;
    }

    /// <summary>Makes a step, if anything comes of it that has not come about already.</summary>
    internal void Apply(Deduction deduction)
    {
        var places = deduction.Places & Board.Candidates;
        if (places.IsEmpty && (deduction.Removes & Board.Candidates).IsEmpty)
            return;
        _steps.Add(StepOf(deduction));
        var after = Board.Remove(deduction.Removes);
        foreach (var placed in places)
            after = after.Candidates.Contains(placed) ? after.Place(placed) : after;
        Take(after, _steps.Count - 1);
    }

    /// <summary>Looks for a dead end; of several it takes the one to which the fewest steps lead.</summary>
    /// <returns>Whether there is one.</returns>
    internal bool Ends()
    {
        Length = int.MaxValue;
        foreach (var end in DeadEnd.FindAll(_real, Board))
        {
            var isNeeded = Trace(end.StoodOn(_real));
            if (isNeeded.Count(needed => needed) is var length && length < Length)
                (_end, _isNeeded, Length) = (end, isNeeded, length);
        }

        return Length < int.MaxValue;
    }

    /// <summary>The deduction that the candidate goes.</summary>
    internal Deduction Deduce(RuleId rule)
    {
        var pattern = new NetPattern(_real, _supposed);
        for (var step = 0; step < _steps.Count; step++)
        {
            if (_isNeeded[step])
                pattern.Add(_steps[step].Deduction, _steps[step].RestsOn, Causes(_steps[step].Needs));
        }

        pattern.End(_end, Causes(_end.StoodOn(_real)));
        return pattern.Deduce(rule);
    }

    // Of the ways to see a single the one for which the fewest candidates had to go.
    private Deduction SimplestSingle(Candidate placed)
    {
        var found = new Findings();
        foreach (var rule in Singles)
            rule.Find(Board, found);
        return found.Where(single => single.Places.Contains(placed)).MinBy(single => StepOf(single).Needs.Count)
            ?? throw new InvalidOperationException($"{placed} is no single.");
    }

    private Step StepOf(Deduction deduction)
    {
        var absent = AbsentFor(deduction);
        return new(deduction, absent & _real.Candidates, absent - _real.Candidates);
    }

    // What it rests on, and where its houses have been filled with other digits on the way.
    private CandidateSet AbsentFor(Deduction deduction)
    {
        var absent = deduction.RestsOn;
        foreach (var house in deduction.Houses)
        {
            foreach (var cell in house.Cells & Board.Filled & _real.Open)
                absent |= CandidateSet.Of(CellSet.Of(cell), deduction.Digits.Without(Board.DigitAt(cell)!.Value));
        }

        return absent;
    }

    private void Take(Board after, int by)
    {
        foreach (var gone in Board.Candidates - after.Candidates)
        {
            if (after.DigitAt(gone.Cell) != gone.Digit)
                _takenBy[IndexOf(gone)] = by;
        }

        Board = after;
    }

    private bool[] Trace(CandidateSet needs)
    {
        var isNeeded = new bool[_steps.Count];
        Mark(needs);
        for (var step = _steps.Count - 1; step >= 0; step--)
        {
            if (isNeeded[step])
                Mark(_steps[step].Needs);
        }

        return isNeeded;

        void Mark(CandidateSet candidates)
        {
            foreach (var candidate in candidates)
            {
                if (_takenBy[IndexOf(candidate)] is var step && step >= 0)
                    isNeeded[step] = true;
            }
        }
    }

    // The candidates with the placed ones that took them out, the last taken at the end; those that were eliminated have none.
    private List<(Candidate By, Candidate Gone)> Causes(CandidateSet needs)
    {
        var causes = new List<(int Step, Candidate By, Candidate Gone)>();
        foreach (var gone in needs)
        {
            var step = _takenBy[IndexOf(gone)];
            var placed = step == Supposed ? CandidateSet.Of(_supposed) : _steps[step].Deduction.Places;
            foreach (var by in placed)
            {
                if (by.Cell == gone.Cell || (by.Digit == gone.Digit && by.Cell.Sees(gone.Cell)))
                    causes.Add((step, by, gone));
            }
        }

        return [.. causes.OrderBy(cause => cause.Step).Select(cause => (cause.By, cause.Gone))];
    }

    private static int IndexOf(Candidate candidate) => candidate.Cell.Index * Digit.Count + candidate.Digit.Index;
}
