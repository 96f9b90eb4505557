namespace Companion.Engine.Proofs;

/// <summary>The phrases of proofs and of reasons for a digit in a cell, and the slots that each may use.</summary>
internal static class WhyPhrases
{
    private static readonly string[] OfRule = ["rule"];
    private static readonly string[] OfCandidate = ["digits", "cells"];

    private static readonly Dictionary<string, string[]> Slots = new()
    {
        ["fact"] = ["conclusion", "how"],
        ["already"] = [],
        ["one"] = OfRule,
        ["several"] = ["steps", "rule"],
        ["at-once"] = ["how", "rule"],
        ["not-proved"] = OfRule,
        ["given"] = OfCandidate,
        ["stands"] = OfCandidate,
        ["filled"] = [.. OfCandidate, "holder"],
        ["seen"] = [.. OfCandidate, "by"],
        ["cannot-be"] = OfCandidate,
    };

    internal static IReadOnlyDictionary<string, string[]> All { get; } = Slots
        .SelectMany(phrase => new[] { "spoken", "written" }.Select(form => ($"why.{phrase.Key}.{form}", phrase.Value)))
        .ToDictionary();
}
