using System.Runtime.InteropServices;

namespace Companion.Engine.Rules.Chains;

/// <summary>
/// Looks for two arms that fit what is supposed: the two with the fewest links in all. Several of these search one board at once.
/// </summary>
internal sealed class JointSearch
{
    // More can hardly be followed, and are hardly ever needed.
    private const int MostLinks = 40;

    private readonly Supposition _supposition = new(oneLink: false);

    // The arms that fit, as a row and in order.
    private readonly List<int> _fitting = [];
    private ulong[] _fits = [];
    private ChainFinder _chains = null!;
    private Arms _arms = null!;

    /// <summary>
    /// What was supposed and turned out to be the other way: the links of all chains, the candidate, whether it was supposed to be
    /// true, and the two arms.
    /// </summary>
    internal List<(int Links, int Single, bool Holds, Arm One, Arm Other)> Found { get; } = [];

    /// <summary>Begins with a board, whose chains and arms were read.</summary>
    internal void Begin(ChainFinder chains, Arms arms)
    {
        (_chains, _arms) = (chains, arms);
        Found.Clear();
        if (_fits.Length < NodeBits.WordsFor(arms.Count))
            _fits = new ulong[NodeBits.WordsFor(arms.Count)];
    }

    /// <summary>Supposes a candidate to be true, and to be false.</summary>
    internal void Suppose(int single)
    {
        Suppose(single, holds: true);
        Suppose(single, holds: false);
    }

    private void Suppose(int single, bool holds)
    {
        _supposition.Follow(_chains, single, holds);
        if (_supposition.RefutesItself)
            return;
        var (fewest, best) = (MostLinks + 1, default((Arm, Arm)));
        var (next, isCounted) = (0, false);
        Fit();
        foreach (var end in _arms.Ends)
        {
            var first = next;
            while (next < _fitting.Count && _fitting[next] < end)
                next++;
            if (next - first < 2)
                continue;
            if (!isCounted)
                _supposition.CountLinks();
            isCounted = true;
            Join(CollectionsMarshal.AsSpan(_fitting)[first..next], CandidateSet.Of(_chains.Graph.CandidateOf(single)), ref fewest, ref best);
        }

        if (fewest <= MostLinks)
            Found.Add((fewest, single, holds, best.Item1, best.Item2));
    }

    private void Fit()
    {
        _fitting.Clear();
        _fits.AsSpan().Clear();
        _arms.AddFitting(_supposition.False, _fits);
        foreach (var arm in new SharedNodes(_fits, _fits))
            _fitting.Add(arm);
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
                if (_supposition.LinksTo(starts) is var links && links < fewest && links > starts.Count)
                    (fewest, best) = (links, (first, second));
            }
        }
    }
}
