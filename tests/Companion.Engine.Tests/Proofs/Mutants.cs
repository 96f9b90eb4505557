using Companion.Engine.Proofs;

namespace Companion.Engine.Tests.Proofs;

/// <summary>A deduction with one part of it changed.</summary>
internal static class Mutants
{
    internal static Deduction RestingOn(this Deduction deduction, CandidateSet restsOn) => Change(deduction, restsOn: restsOn);

    internal static Deduction About(this Deduction deduction, HouseSet houses, DigitSet digits) =>
        Change(deduction, houses: houses, digits: digits);

    internal static Deduction Removing(this Deduction deduction, Candidate candidate) =>
        Change(deduction, places: CandidateSet.Empty, removes: CandidateSet.Of(candidate));

    internal static Deduction AlsoRemoving(this Deduction deduction, Candidate candidate) =>
        Change(deduction, removes: deduction.Removes.With(candidate));

    private static Deduction Change(
        Deduction from,
        HouseSet? houses = null,
        DigitSet? digits = null,
        CandidateSet? restsOn = null,
        CandidateSet? places = null,
        CandidateSet? removes = null) => new()
        {
            Rule = from.Rule,
            Cells = from.Cells,
            Links = from.Links,
            Sets = from.Sets,
            Houses = houses ?? from.Houses,
            Digits = digits ?? from.Digits,
            RestsOn = restsOn ?? from.RestsOn,
            Places = places ?? from.Places,
            Removes = removes ?? from.Removes,
            AssumesOneSolution = from.AssumesOneSolution,
        };
}
