using System.Collections.Immutable;
using System.CommandLine;
using Companion.Engine.Planning;
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

    /// <summary>The rules that were named, early or late.</summary>
    /// <param name="names">The names, each with its time after a colon or without.</param>
    /// <param name="ladder">The ladder that they must be on.</param>
    /// <param name="usual">The time of those that have none.</param>
    /// <exception cref="PlainException">One is not on the ladder, or has another time.</exception>
    public static ImmutableArray<Feature> ReadTimed(IEnumerable<string> names, Ladder ladder, Timing usual)
    {
        var parts = names.Select(name => name.Split(':', 2)).ToList();
        return
        [
            .. Read(parts.Select(part => part[0]), ladder)
                .Zip(parts, (rule, part) => new Feature(rule, part.Length == 1 ? usual : TimeOf(part[1]))),
        ];
    }

    private static Timing TimeOf(string word) => word switch
    {
        "early" => Timing.Early,
        "late" => Timing.Late,
        _ => throw new PlainException($"A featured rule is shown early or late and not '{word}': write it as in xy-wing:early."),
    };
}
