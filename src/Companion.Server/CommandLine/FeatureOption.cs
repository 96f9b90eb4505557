using System.Collections.Immutable;
using System.CommandLine;
using Companion.Engine.Proofs;
using Companion.Engine.Rules;

namespace Companion.Server.CommandLine;

/// <summary>The option that names featured rules.</summary>
internal static class FeatureOption
{
    /// <summary>The option.</summary>
    /// <param name="description">What it is for.</param>
    public static Option<string[]> Make(string description) => new("--feature")
    {
        Description = description,
        HelpName = "rule",
        DefaultValueFactory = _ => [],
    };

    /// <summary>The rules that were named.</summary>
    /// <param name="names">The names.</param>
    /// <param name="ladder">The ladder that they must be on.</param>
    /// <exception cref="PlainException">One is not on the ladder.</exception>
    public static ImmutableArray<RuleId> Read(IEnumerable<string> names, Ladder ladder) =>
    [
        .. names.Select(name => new RuleId(name)).Select(rule => ladder.Has(rule)
            ? rule
            : throw new PlainException($"This ladder has no rule called '{rule}': name one of ladder.json that is not cut off.")),
    ];
}
