using System.CommandLine;

namespace Companion.Server.CommandLine;

/// <summary>The option that names a seed.</summary>
internal static class SeedOption
{
    /// <summary>The option.</summary>
    /// <param name="description">What it is for.</param>
    public static Option<ulong?> Make(string description) => new("--seed")
    {
        Description = description,
        HelpName = "number",
        CustomParser = result =>
        {
            if (ulong.TryParse(result.Tokens[0].Value, out var seed))
                return seed;
            result.AddError($"--seed takes a whole number from 0 to {ulong.MaxValue} and not '{result.Tokens[0].Value}'.");
            return null;
        },
    };
}
