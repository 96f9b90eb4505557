using Companion.Engine.Proofs;

namespace Companion.Engine.Rules.Nets;

/// <summary>Gathers what a net names, step by step.</summary>
internal sealed class NetPattern
{
    private readonly Board _real;
    private readonly Candidate _supposed;
    private readonly List<PatternCell> _cells = [];
    private readonly List<Link> _links = [];
    private readonly List<CellSet> _sets = [];
    private readonly List<Deduction> _steps = [];
    private CellSet _known;
    private HouseSet _houses;
    private DigitSet _digits;
    private CandidateSet _restsOn;
    private DeadEnd _end;

    internal NetPattern(Board real, Candidate supposed)
    {
        (_real, _supposed, _digits) = (real, supposed, DigitSet.Of(supposed.Digit));
        Add(supposed.Cell, Role.Start);
    }

    /// <summary>Adds a step.</summary>
    /// <param name="step">What was found.</param>
    /// <param name="restsOn">What it rests on that is really absent.</param>
    /// <param name="causes">What placed candidates took out for it, the last at the end.</param>
    internal void Add(Deduction step, CandidateSet restsOn, List<(Candidate By, Candidate Gone)> causes)
    {
        _steps.Add(step);
        foreach (var (cell, _) in step.Cells)
            Add(cell, Role.Chain);
        _houses |= step.Houses;
        _digits |= step.Digits;
        _restsOn |= restsOn;
        _sets.AddRange(step.Sets.Except(_sets));
        Link(causes);
        _links.AddRange(step.Links);
        if (step.Places.Count == 1 && causes.Count > 0)
            _links.Add(new(causes[^1].Gone, step.Places.Single(), IsStrong: true));
    }

    /// <summary>Adds the contradiction.</summary>
    internal void End(DeadEnd end, List<(Candidate By, Candidate Gone)> causes)
    {
        _end = end;
        _digits |= end.Digits;
        Link(causes);
        if (end.House is { } house)
        {
            _houses = _houses.With(house);
            _restsOn |= CandidateSet.Of(_real.Open & house.Cells, end.Digits) - _real.Candidates;
        }
        else if (end.Cell is { } cell)
        {
            Add(cell, Role.ChainEnd);
            _restsOn |= CandidateSet.Of(CellSet.Of(cell), ~end.Digits);
        }
    }

    internal Deduction Deduce(RuleId rule) => new()
    {
        Rule = rule,
        Cells = [.. _cells],
        Houses = _houses,
        Digits = _digits,
        Links = [.. _links],
        Sets = [.. _sets],
        Branches = [new(_supposed, [.. _steps], _end)],
        RestsOn = _restsOn,
        Removes = CandidateSet.Of(_supposed),
    };

    private void Add(Cell cell, Role role)
    {
        if (!_known.Contains(cell))
            _cells.Add(new(cell, role));
        _known = _known.With(cell);
    }

    // What is out already was linked where it was needed first, but for the last cause, from which the step goes on.
    private void Link(List<(Candidate By, Candidate Gone)> causes)
    {
        foreach (var (by, gone) in causes)
        {
            var link = new Link(by, gone, IsStrong: false);
            if (!_links.Contains(link))
                _links.Add(link);
        }
    }
}
