using Companion.Engine.Proofs;

namespace Companion.Engine.Rules.Chains;

/// <summary>
/// Finds what follows from two choices that cannot both be met in one cell, or by one digit in one house, so that one of their other
/// candidates is true: for each candidate the two with the fewest links in all. Kept for the thread's last board.
/// </summary>
internal sealed class JointForcing : FewestLinksFirst
{
    [ThreadStatic]
    private static JointForcing? _ofThread;

    private readonly Arms _arms = new();
    private readonly JointSearch _search = new();
    private readonly JointSearch _help = new();
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
    /// <param name="board">The board.</param>
    /// <param name="mayTakeTwoCores">Whether two cores may read it.</param>
    internal static JointForcing For(Board board, bool mayTakeTwoCores)
    {
        var joint = _ofThread ??= new();
        if (!ReferenceEquals(joint._board, board))
            joint.Read(board, mayTakeTwoCores);
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

    // Of two cores one reads the chains and the other the arms; then both suppose.
    private void Read(Board board, bool mayTakeTwoCores)
    {
        _board = board;
        _starts.Clear();
        Conclusions.Clear();
        _help.Found.Clear();
        var (chains, arms, next) = (new SharedWork(), new SharedWork(), -1);
        if (mayTakeTwoCores)
            TwoCores.Run(Work, Help);
        else
            Work();
        Conclude(_search);
        Conclude(_help);
        Conclusions.Sort();

        void Work()
        {
            chains.Do(() => _chains = ChainFinder.For(board, ChainKind.Whole));
            arms.Do(() => _arms.Read(board));
            arms.Await();
            SupposeWith(_search);
        }

        void Help()
        {
            arms.Do(() => _arms.Read(board));
            arms.Await();
            chains.Await();
            SupposeWith(_help);
        }

        void SupposeWith(JointSearch search)
        {
            search.Begin(_chains, _arms);
            while (Interlocked.Increment(ref next) is var single && single < Graph.Singles)
                search.Suppose(single);
        }
    }

    private void Conclude(JointSearch search)
    {
        foreach (var (links, single, holds, one, other) in search.Found)
        {
            Conclusions.Add(new(links, single, !holds, _starts.Count));
            _starts.Add((one, other));
        }
    }
}
