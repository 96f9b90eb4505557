using Companion.Engine.Proofs;

namespace Companion.Drawing.Pictures;

/// <summary>
/// The letters on the tabs of pattern cells. A letter belongs to one role in all pictures; only the outer cells of a wing have
/// one each, since they are talked about one by one.
/// </summary>
internal sealed class Tabs
{
    private const string Pincers = "QRT";

    private int _pincers;

    /// <summary>Whether cells of this role have the double frame.</summary>
    internal static bool IsSecond(Role role) =>
        role is Role.Pincer or Role.Fin or Role.Between or Role.SecondColour or Role.ChainEnd or Role.Set or Role.Roof;

    /// <summary>The letter of the picture's next cell.</summary>
    internal string Next(Role role) => role switch
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
        Role.Set => "A",
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
        "A" => "almost locked set",
        "O" => "where the chains start",
        "G" => "floor",
        "U" => "roof",
        _ => throw new ArgumentException($"No role has the letter '{tab}'.", nameof(tab)),
    };
}
