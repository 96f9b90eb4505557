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
            net.ApplySingle(candidate);
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
        Take(After(deduction, Board), _steps.Count - 1);
    }

    /// <summary>Places a single, said in the simplest way.</summary>
    internal void ApplySingle(Candidate placed) => Apply(SimplestSingle(placed));

    /// <summary>The net to which these rules lead, in each round all that the first of them finds that finds anything.</summary>
    /// <returns>The net, or null where they lead to no dead end.</returns>
    internal static Net? ByRules(Board board, Candidate supposed, ReadOnlySpan<IRule> rules)
    {
        var net = new Net(board, supposed);
        while (!net.Ends())
        {
            if (!net.GoOn(rules))
                return null;
        }

        return net;
    }

    private bool GoOn(ReadOnlySpan<IRule> rules)
    {
        foreach (var rule in rules)
        {
            var found = new Findings();
            rule.Find(Board, found);
            foreach (var deduction in found)
                Apply(deduction);
            if (found.Count > 0)
                return true;
        }

        return false;
    }

    /// <summary>
    /// Looks for a dead end; of several it takes the one to which the fewest steps lead. Then leaves out, the last ones first, what it
    /// is reached without.
    /// </summary>
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

        if (Length == int.MaxValue)
            return false;
        for (var step = _steps.Count - 1; step >= 0; step--)
            LeaveOut(step);
        return true;
    }

    /// <summary>The deduction that the candidate goes.</summary>
    internal Deduction Deduce(RuleId rule)
    {
        var pattern = new NetPattern(_real, _supposed);
        var board = _real.Place(_supposed);
        var wanted = _end.StoodOn(_real);
        for (var step = 0; step < _steps.Count; step++)
            wanted |= _isNeeded[step] ? _steps[step].Needs : CandidateSet.Empty;
        for (var step = 0; step < _steps.Count; step++)
        {
            if (!_isNeeded[step])
                continue;
            var (deduction, needs, restsOn) = _steps[step];
            pattern.Add(On(board, deduction, needs | restsOn, wanted), restsOn, Causes(needs));
            board = After(deduction, board);
        }

        pattern.End(_end, Causes(_end.StoodOn(_real)));
        return pattern.Deduce(rule);
    }

    private void LeaveOut(int step)
    {
        if (!_isNeeded[step])
            return;
        _isNeeded[step] = false;
        if (IsReached())
            Length--;
        else
            _isNeeded[step] = true;
    }

    // Whether the needed steps alone hold one after another and lead to the end.
    private bool IsReached()
    {
        var board = _real.Place(_supposed);
        for (var step = 0; step < _steps.Count; step++)
        {
            if (!_isNeeded[step])
                continue;
            var (deduction, needs, _) = _steps[step];
            if (!(needs & board.Candidates).IsEmpty)
                return false;
            board = After(deduction, board);
        }

        return (_end.StoodOn(_real) & board.Candidates).IsEmpty && !_end.IsMadeOn(board);
    }

    private static Board After(Deduction deduction, Board board)
    {
        var after = board.Remove(deduction.Removes);
        foreach (var placed in deduction.Places)
            after = after.Candidates.Contains(placed) ? after.Place(placed) : after;
        return after;
    }

    // The step on a board where only the needed steps were made: there it may rest on more. Of what goes only that is told which is
    // wanted gone.
    private static Deduction On(Board board, Deduction step, CandidateSet absent, CandidateSet wanted) => new()
    {
        Rule = step.Rule,
        Cells = step.Cells,
        Houses = step.Houses,
        Digits = step.Digits,
        Links = step.Links,
        Sets = step.Sets,
        Branches = step.Branches,
        RestsOn = absent.In(board.Open),
        Places = step.Places,
        Removes = step.Removes & board.Candidates & wanted,
    };

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
