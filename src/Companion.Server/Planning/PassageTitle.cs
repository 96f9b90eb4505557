using Companion.Engine.Planning;
using Companion.Engine.Proofs;

namespace Companion.Server.Planning;

/// <summary>The title of a passage: <c>Singles in the left stack</c>.</summary>
internal static class PassageTitle
{
    private static readonly string[] Bands = ["top", "middle", "bottom"];
    private static readonly string[] Stacks = ["left", "middle", "right"];

    /// <summary>The title.</summary>
    /// <param name="passage">The passage.</param>
    /// <param name="wording">The names of rules.</param>
    public static string Of(Passage passage, Wording wording) => passage.Theme switch
    {
        Theme.Turn turn => $"Featured: {wording.NameOf(turn.Rule)}",
        Theme.OfRule same when passage.Count > 1 => $"{Capital(wording.NameOf(same.Rule))}, {passage.Count} times",
        Theme.OfRule same => Capital(wording.NameOf(same.Rule)),
        Theme.InHouse { House: var house } => $"{Singles(passage)} in {house.Kind.ToString().ToLowerInvariant()} {house.Number}",
        Theme.OfDigit { Digit: var digit } => $"{Singles(passage)}: the {digit}s",
        Theme.InChute { Chute: { IsBand: true } chute } => $"{Singles(passage)} in the {Bands[chute.Number - 1]} band",
        Theme.InChute { Chute: var chute } => $"{Singles(passage)} in the {Stacks[chute.Number - 1]} stack",
        _ => $"{Singles(passage)} across the grid",
    };

    private static string Singles(Passage passage) => passage.Count == 1 ? "A single" : "Singles";

    private static string Capital(string name) => char.ToUpperInvariant(name[0]) + name[1..];
}
