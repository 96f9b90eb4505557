using Companion.Engine.Proofs;
using Companion.Engine.Rules.Nets;

namespace Companion.Engine.Rules;

/// <summary>
/// Nested forcing net. Finds a candidate which, once it is supposed to be true, leads to a cell without a candidate or to a house in
/// which a digit has no place, by singles and by what takes candidates out on the way: easy rules, or others supposed in turn; the
/// candidate goes.
/// </summary>
/// <remarks>
/// <para>
/// Why it holds: each step follows from the candidate and from what came before it, and the end cannot be. So the candidate is
/// false. What is supposed within is false for the same reason, as long as the first candidate is supposed to be true.
/// </para>
/// <code>
/// # . . | 1259 19 . | 159 . .      If # is 1, r1c5 can only be 9, r1c7 5 and r1c4 2. Then
/// . . . | .    .  . | .   . .      r7c4 cannot be 3, or else r7c7 can only be 6 and r4c7
/// . . . | .    .  . | .   . .      8, so that nothing is left for r4c4. So r7c4 can only
/// ------+-----------+--------      be 4, and nothing is left for r9c5: # is not 1.
/// . . . | 238  .  . | 568 . .
/// . . . | .    .  . | .   . .
/// . . . | .    .  . | .   . .
/// ------+-----------+--------
/// . . . | 234  .  . | 356 . .
/// . . . | .    .  . | .   . .
/// . . . | .    49 . | .   . .
/// </code>
/// <para>
/// All of them: not all. First all candidates are followed by singles, pointing, claiming, naked and hidden pairs and triples and
/// X-wings, the easiest of them that finds anything first. Where that refutes none, all are followed by singles and by refuting
/// others in turn, which are followed by singles alone: by none, by one round of them, by two, by four, by as many as there are; the
/// first of these that refutes any candidate is the last that is tried. So a chain within a net is said as a supposition of its own.
/// Of the candidates that are refuted the twelve come that need the fewest steps, in this order, then by the candidate, where a
/// supposition within counts for its singles and one more. A net keeps only steps of which none can be left out. There may be
/// shorter nets: only this way of following is tried, and of the dead ends that it comes to the one that needs the fewest. It rests on all that
/// its steps and its end rest on.
/// </para>
/// <para>Cost: a tenth of a second on hard boards. It allocates.</para>
/// <para>Source: common practice.</para>
/// </remarks>
public sealed class NestedForcingNet : IRule
{
    // Nobody follows more of them.
    private const int Most = 12;

    private static readonly IRule[] Easy =
    [
        new HiddenSingle(), new NakedSingle(), new Pointing(), new Claiming(), new NakedPair(), new HiddenPair(), new NakedTriple(),
        new HiddenTriple(), new XWing(),
    ];

    /// <inheritdoc/>
    public RuleId Id { get; } = new("nested-forcing-net");

    /// <inheritdoc/>
    public Effort Effort => Effort.LastResort;

    /// <inheritdoc/>
    public void Find(Board board, Findings found)
    {
        if (DeadEnd.FindAll(board, board).Any())
            return;
        var before = found.Count;
        FindByEasyRules(board, found);
        if (found.Count == before && !found.IsFull)
            NestedSearch.Find(Id, board, Most, found);
    }

    private void FindByEasyRules(Board board, Findings found)
    {
        List<Candidate> candidates = [.. board.Candidates];
        var nets = new Net?[candidates.Count];
        var next = -1;
        if (found.Cores > 1)
            TwoCores.Run(FollowAll, FollowAll);
        else
            FollowAll();
        foreach (var net in nets.OfType<Net>().OrderBy(net => net.Length).Take(Most))
        {
            if (!found.Add(net.Deduce(Id)))
                return;
        }

        // One candidate after another, with whoever does too.
        void FollowAll()
        {
            while (Interlocked.Increment(ref next) is var place && place < candidates.Count && !found.IsFull)
                nets[place] = Net.ByRules(board, candidates[place], Easy);
        }
    }
}
