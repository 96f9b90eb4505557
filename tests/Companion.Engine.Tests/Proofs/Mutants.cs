using Companion.Engine.Proofs;

namespace Companion.Engine.Tests.Proofs;

/// <summary>A deduction with one part of it changed.</summary>
internal static class Mutants
{
    internal static Deduction RestingOn(this Deduction deduction, CandidateSet restsOn) =>
        Make(deduction, deduction.Houses, deduction.Digits, restsOn, deduction.Places, deduction.Removes);

    internal static Deduction About(this Deduction deduction, HouseSet houses, DigitSet digits) =>
        Make(deduction, houses, digits, deduction.RestsOn, deduction.Places, deduction.Removes);

    internal static Deduction Removing(this Deduction deduction, Candidate candidate) =>
        Make(deduction, deduction.Houses, deduction.Digits, deduction.RestsOn, CandidateSet.Empty, CandidateSet.Of(candidate));

    internal static Deduction AlsoRemoving(this Deduction deduction, Candidate candidate) =>
        Make(deduction, deduction.Houses, deduction.Digits, deduction.RestsOn, deduction.Places, deduction.Removes.With(candidate));

    private static Deduction Make(
        Deduction from, HouseSet houses, DigitSet digits, CandidateSet restsOn, CandidateSet places, CandidateSet removes) => new()
        {
            Rule = from.Rule,
            Cells = from.Cells,
            Links = from.Links,
            Houses = houses,
            Digits = digits,
            RestsOn = restsOn,
            Places = places,
            Removes = removes,
        };
}
