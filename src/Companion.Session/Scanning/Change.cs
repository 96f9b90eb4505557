using Companion.Engine;
using Companion.Engine.Proofs;
using Companion.Session.Boards;
using Companion.Session.State;

namespace Companion.Session.Scanning;

/// <summary>What an entry says that the grid before it did not say.</summary>
/// <param name="Places">Digits placed.</param>
/// <param name="Removes">Candidates taken out by marks and strikes.</param>
internal readonly record struct Change(CandidateSet Places, CandidateSet Removes)
{
    public static Change Between((Grid Grid, CellSet Writing) before, (Grid Grid, CellSet Writing) after) => new(
        after.Grid.Placed - before.Grid.Placed,
        MarkMeaning.Of(after.Grid, after.Writing) - MarkMeaning.Of(before.Grid, before.Writing));

    /// <summary>Whether it does something that the deduction concludes.</summary>
    public bool CarriesOut(Deduction deduction) =>
        !(deduction.Places & Places).IsEmpty || !(deduction.Removes & Removes).IsEmpty;
}
