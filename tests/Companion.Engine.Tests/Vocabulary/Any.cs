using CsCheck;

namespace Companion.Engine.Tests.Vocabulary;

/// <summary>Generators of the vocabulary. CsCheck prints the seed of a failure, with which it can be run again.</summary>
internal static class Any
{
    internal static Gen<Cell> Cell { get; } = Gen.Int[0, 80].Select(Engine.Cell.At);

    internal static Gen<Digit> Digit { get; } = Gen.Int[1, 9].Select(Engine.Digit.Of);

    internal static Gen<Candidate> Candidate { get; } = Gen.Select(Cell, Digit, (cell, digit) => new Candidate(cell, digit));

    internal static Gen<CellSet> CellSet { get; } = Subset([.. Engine.CellSet.All], cells => Engine.CellSet.Of([.. cells]));

    internal static Gen<DigitSet> DigitSet { get; } = Subset([.. Engine.DigitSet.All], digits => Engine.DigitSet.Of([.. digits]));

    internal static Gen<HouseSet> HouseSet { get; } = Subset([.. Engine.HouseSet.All], houses => Engine.HouseSet.Of([.. houses]));

    internal static Gen<CandidateSet> CandidateSet { get; } = Subset(
        [.. Engine.CandidateSet.Of(Engine.CellSet.All, Engine.DigitSet.All)],
        candidates => Engine.CandidateSet.Of([.. candidates]));

    // The solution of the easy example of the code that goes with Russell & Norvig, "Artificial Intelligence: A Modern Approach",
    // with some of its cells blank.
    internal static Gen<string> Grid { get; } = CellSet.Select(filled => string.Concat(
        "483921657967345821251876493548132976729564138136798245372689514814253769695417382"
            .Select((digit, index) => filled.Contains(Engine.Cell.At(index)) ? digit : BoardText.Blank)));

    // From nearly empty to nearly full.
    private static Gen<TSet> Subset<TMember, TSet>(TMember[] all, Func<IEnumerable<TMember>, TSet> make) => Gen
        .Select(Gen.Int[0, 100], Gen.Int[0, 99].Array[all.Length])
        .Select((share, draws) => make(all.Where((_, index) => draws[index] < share)));
}
