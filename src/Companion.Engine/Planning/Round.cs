using System.Collections.Immutable;
using Companion.Engine.Proofs;
using Companion.Engine.Rules;

namespace Companion.Engine.Planning;

/// <summary>All that the easiest rule which finds anything finds on a board, to be carried out together.</summary>
/// <param name="Board">The board.</param>
/// <param name="Rung">The rung of the rule.</param>
/// <param name="Open">The deductions, at least one.</param>
public sealed record Round(Board Board, Rung Rung, ImmutableArray<Deduction> Open)
{
    /// <summary>How many different things follow. Where it is 1 there is only one way on.</summary>
    public int Ways => Open.Select(deduction => (deduction.Places, deduction.Removes)).Distinct().Count();

    /// <summary>The deductions one after the other, without those of which all that follows has been said before.</summary>
    public IEnumerable<Deduction> Steps
    {
        get
        {
            var places = CandidateSet.Empty;
            var removes = CandidateSet.Empty;
            foreach (var deduction in Open)
            {
                if ((deduction.Places - places).IsEmpty && (deduction.Removes - removes).IsEmpty)
                    continue;
                places |= deduction.Places;
                removes |= deduction.Removes;
                yield return deduction;
            }
        }
    }
}
