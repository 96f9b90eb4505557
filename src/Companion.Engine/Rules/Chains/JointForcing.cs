using System.Runtime.InteropServices;
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

    private readonly Arms _arms = new();

    // The arms that fit what is supposed, in order.
    private readonly List<int> _fitting = [];
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
        _arms.Read(board, Graph);
        for (var single = 0; single < Graph.Singles; single++)
        {
            Suppose(single, holds: true);
            Suppose(single, holds: false);
        }

        Conclusions.Sort();
    }

    private void Suppose(int single, bool holds)
    {
        Supposition.Follow(Chains, single, holds);
        if (Supposition.RefutesItself)
            return;
        var (fewest, best) = (MostLinks + 1, default((Arm, Arm)));
        var (next, isCounted) = (0, false);
        _fitting.Clear();
        _arms.AddFitting(Supposition.False, _fitting);
        foreach (var end in _arms.Ends)
        {
            var first = next;
            while (next < _fitting.Count && _fitting[next] < end)
                next++;
            if (next - first < 2)
                continue;
            if (!isCounted)
                Supposition.CountLinks();
            isCounted = true;
            Join(CollectionsMarshal.AsSpan(_fitting)[first..next], CandidateSet.Of(Graph.CandidateOf(single)), ref fewest, ref best);
        }

        if (fewest > MostLinks)
            return;
        Conclusions.Add(new(fewest, single, !holds, _starts.Count));
        _starts.Add(best);
    }

    // Takes the two of these arms with the fewest links, if they have fewer. What they share is not what is concluded: then one of
    // the choices would do.
    private void Join(ReadOnlySpan<int> arms, in CandidateSet concluded, ref int fewest, ref (Arm, Arm) best)
    {
        for (var one = 0; one < arms.Length; one++)
        {
            for (var other = one + 1; other < arms.Length; other++)
            {
                ref readonly var first = ref _arms[arms[one]];
                ref readonly var second = ref _arms[arms[other]];
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
