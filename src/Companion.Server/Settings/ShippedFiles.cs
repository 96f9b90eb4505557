using Companion.Engine.Planning.Talking;
using Companion.Engine.Proofs;
using Companion.Engine.Rules;

namespace Companion.Server.Settings;

/// <summary>The files of <c>configs/</c> that lie beside the program.</summary>
internal static class ShippedFiles
{
    /// <summary>The settings as they ship.</summary>
    public static string Settings => At("companion.json");

    /// <summary>The puzzle to begin with.</summary>
    public static string Demo => At("demo.json");

    /// <summary>The ladder as it ships.</summary>
    public static string Ladder => At("ladder.json");

    /// <summary>The words for deductions, with the names that the ladder gives its rules.</summary>
    /// <param name="ladder">The ladder.</param>
    /// <exception cref="PlainException">The file is missing or was broken by a change.</exception>
    public static Wording Wording(Ladder ladder)
    {
        var path = At("phrases", "en.json");
        try
        {
            return new(Phrases.Parse(File.ReadAllText(path)).Calling(ladder));
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or FormatException)
        {
            throw new PlainException($"The phrases in {path} cannot be used: {fault.Message}", fault);
        }
    }

    /// <summary>How often talking points are true.</summary>
    /// <exception cref="PlainException">The file is missing or was broken by a change.</exception>
    public static Rarity Rarity()
    {
        var path = At("rarity.json");
        try
        {
            return Companion.Engine.Planning.Talking.Rarity.Parse(File.ReadAllText(path));
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or FormatException)
        {
            throw new PlainException($"The rarities in {path} cannot be used: {fault.Message}", fault);
        }
    }

    private static string At(params ReadOnlySpan<string> names) => Path.Combine([AppContext.BaseDirectory, "configs", .. names]);
}
