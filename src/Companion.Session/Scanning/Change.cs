using Companion.Engine;
using Companion.Engine.Proofs;
using Companion.Engine.Rules;
using Companion.Session.Boards;
using Companion.Session.State;

namespace Companion.Session.Scanning;

/// <summary>What an entry says that the grid before it did not say.</summary>
/// <param name="Places">Digits placed.</param>
/// <param name="Removes">Candidates taken out by marks and strikes.</param>
internal readonly record struct Change(CandidateSet Places, CandidateSet Removes)
{
    /// <summary>Whether it says nothing, as an erasure does.</summary>
    public bool IsEmpty => Places.IsEmpty && Removes.IsEmpty;

    public static Change Between((Grid Grid, CellSet Writing) before, (Grid Grid, CellSet Writing) after) => new(
        after.Grid.Placed - before.Grid.Placed,
        MarkMeaning.Of(after.Grid, after.Writing) - MarkMeaning.Of(before.Grid, before.Writing));

    /// <summary>Whether it does something that the deduction concludes.</summary>
    public bool CarriesOut(Deduction deduction) =>
        !(deduction.Places & Places).IsEmpty || !(deduction.Removes & Removes).IsEmpty;

    /// <summary>Whether all of it is on the board already or is concluded by a deduction that is open there.</summary>
    public bool FollowsOn(Board board, Ladder ladder, CancellationToken cancel)
    {
        var places = Places;
        var removes = Removes & board.Candidates;
        if (places.IsEmpty && removes.IsEmpty)
            return true;
        foreach (var deduction in ladder.Scan(board, cancel))
        {
            places -= deduction.Places;
            removes -= deduction.Removes;
        }

        return places.IsEmpty && removes.IsEmpty;
    }
}
