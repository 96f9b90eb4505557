using System.Collections.Immutable;
using Companion.Engine;
using Companion.Engine.Proofs;

namespace Companion.Drawing.Pictures;

/// <summary>
/// The letters on the tabs of pattern cells. A letter belongs to one role in all pictures; only the outer cells of a wing and the
/// almost locked sets have one each, since they are talked about one by one. A cell of two sets has the letters of both.
/// </summary>
internal sealed class Tabs
{
    private const string Pincers = "QRT";
    private const string Sets = "ADJKNVW";

    private int _pincers;

    /// <summary>Whether cells of this role have the double frame.</summary>
    internal static bool IsSecond(Role role) =>
        role is Role.Pincer or Role.Fin or Role.Between or Role.SecondColour or Role.ChainEnd or Role.Set or Role.Roof;

    /// <summary>The letter of the picture's next cell.</summary>
    /// <param name="role">What the cell does.</param>
    /// <param name="sets">The almost locked sets of the picture.</param>
    /// <param name="cell">The cell.</param>
    internal string Next(Role role, ImmutableArray<CellSet> sets, Cell cell) => role switch
    {
        Role.Single => "S",
        Role.Locked => "L",
        Role.Subset => "M",
        Role.Base => "B",
        Role.Pivot => "P",
        Role.Pincer => Pincers[Math.Min(_pincers++, Pincers.Length - 1)].ToString(),
        Role.Fin => "F",
        Role.Cross => "H",
        Role.End => "E",
        Role.Between => "I",
        Role.FirstColour => "X",
        Role.SecondColour => "Y",
        Role.ChainEnd => "Z",
        Role.Chain => "C",
        Role.Set => LettersOf(sets, cell),
        Role.Start => "O",
        Role.Floor => "G",
        Role.Roof => "U",
        _ => throw new ArgumentOutOfRangeException(nameof(role), role, "The role has no letter."),
    };

    /// <summary>What a letter stands for.</summary>
    /// <exception cref="ArgumentException">No role has this letter.</exception>
    internal static string MeaningOf(string tab) => tab switch
    {
        "S" => "single",
        "L" => "locked to these cells",
        "M" => "member of the subset",
        "B" => "base cell",
        "P" => "pivot",
        "Q" or "R" or "T" => "pincer",
        "F" => "fin",
        "H" => "row and column of the block",
        "E" => "end",
        "I" => "in between",
        "X" => "one colour",
        "Y" => "the other colour",
        "Z" => "end of the chain",
        "C" => "chain",
        "O" => "where the chains start",
        "G" => "floor",
        "U" => "roof",
        _ when tab.Length > 0 && tab.All(letter => Sets.Contains(letter)) => "almost locked set",
        _ => throw new ArgumentException($"No role has the letter '{tab}'.", nameof(tab)),
    };

    // Two letters at most, or the tab would cover the candidates beside it.
    private static string LettersOf(ImmutableArray<CellSet> sets, Cell cell) => string.Concat(
        sets.Select((set, number) => set.Contains(cell) ? Sets[Math.Min(number, Sets.Length - 1)].ToString() : "").Where(letter => letter != "").Take(2));
}
