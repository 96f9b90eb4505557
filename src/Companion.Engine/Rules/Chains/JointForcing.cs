using Companion.Engine.Proofs;

namespace Companion.Engine.Rules.Chains;

/// <summary>
/// Finds what follows from two choices that cannot both be met in one cell, or by one digit in one house, so that one of their other
/// candidates is true: for each candidate the two with the fewest links in all. Kept for the thread's last board.
/// </summary>
internal sealed class JointForcing : FewestLinksFirst
{
    // More can hardly be followed, and are hardly ever needed.
    private const int MostLinks = 40;

    [ThreadStatic]
    private static JointForcing? _ofThread;

    private readonly List<Choice> _choices = [];
    private readonly List<Arm> _arms = [];
    private readonly CandidateRows _rows = new();

    // Where the arms of each cell, and of each digit in each house, end among all.
    private readonly List<int> _ends = [];
    private readonly List<int> _fit = [];
    private readonly List<(Arm One, Arm Other)> _starts = [];
    private ChainFinder _chains = null!;
    private Board? _board;

    private JointForcing()
        : base(oneLink: false)
    {
    }

    /// <inheritdoc/>
    protected override ChainFinder Chains => _chains;

    /// <summary>The finder, with the board read.</summary>
    internal static JointForcing For(Board board)
    {
        var joint = _ofThread ??= new();
        joint._chains = ChainFinder.For(board, ChainKind.Whole);
        if (!ReferenceEquals(joint._board, board))
            joint.Read(board);
        return joint;
    }

    /// <summary>Adds what follows.</summary>
    internal void Find(RuleId rule, Board board, Findings found) => Find(rule, board, _ => true, found);

    /// <inheritdoc/>
    protected override CandidateSet Begin(ChainPattern pattern, int start)
    {
        var (one, other) = _starts[start];
        pattern.Start(one, other);
        return one.Starts | other.Starts;
    }

    private void Read(Board board)
    {
        _board = board;
        _starts.Clear();
        Conclusions.Clear();
        _rows.Begin(Graph);
        FindArms(board);
        for (var single = 0; single < Graph.Singles; single++)
        {
            Suppose(single, holds: true);
            Suppose(single, holds: false);
        }

        Conclusions.Sort();
    }

    private void FindArms(Board board)
    {
        _choices.Clear();
        _arms.Clear();
        _ends.Clear();
        Choice.FindAll(board, houses: true, fewest: 3, _choices);
        foreach (var cell in board.Open)
            AddArms(CandidateSet.Of(CellSet.Of(cell), board[cell]));
        foreach (var house in HouseSet.All)
        {
            foreach (var digit in board.MissingFrom(house))
                AddArms(CandidateSet.Of(board[digit] & house.Cells, digit));
        }
    }

    // Only one of these candidates can be true.
    private void AddArms(CandidateSet exclusive)
    {
        foreach (var choice in _choices)
        {
            var arm = new Arm(choice, choice.Candidates & exclusive);
            if (arm.Shared.IsEmpty || arm.Starts.IsEmpty)
                continue;
            _arms.Add(arm);
            _rows.Add(arm.Starts);
        }

        _ends.Add(_arms.Count);
    }

    private void Suppose(int single, bool holds)
    {
        Supposition.Follow(Chains, single, holds);
        if (Supposition.RefutesItself)
            return;
        var (fewest, best) = (MostLinks + 1, default((Arm, Arm)));
        var (next, isCounted) = (0, false);
        foreach (var end in _ends)
        {
            _fit.Clear();
            for (; next < end; next++)
            {
                if (_rows.IsWithin(next, Supposition.False))
                    _fit.Add(next);
            }

            if (_fit.Count < 2)
                continue;
            if (!isCounted)
                Supposition.CountLinks();
            isCounted = true;
            Join(CandidateSet.Of(Graph.CandidateOf(single)), ref fewest, ref best);
        }

        if (fewest > MostLinks)
            return;
        Conclusions.Add(new(fewest, single, !holds, _starts.Count));
        _starts.Add(best);
    }

    // Takes the two of the arms that fit with the fewest links, if they have fewer. What they share is not what is concluded: then one
    // of the choices would do.
    private void Join(CandidateSet concluded, ref int fewest, ref (Arm, Arm) best)
    {
        for (var one = 0; one < _fit.Count; one++)
        {
            for (var other = one + 1; other < _fit.Count; other++)
            {
                var (first, second) = (_arms[_fit[one]], _arms[_fit[other]]);
                if (!(first.Shared & second.Shared).IsEmpty || !((first.Shared | second.Shared) & concluded).IsEmpty)
                    continue;
                var starts = first.Starts | second.Starts;
                // One link from each candidate: a pair of cells or of lines, as easier rules find it.
                if (LinksTo(starts) is var links && links < fewest && links > starts.Count)
                    (fewest, best) = (links, (first, second));
            }
        }
    }
}
