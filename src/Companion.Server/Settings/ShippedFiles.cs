using Companion.Engine.Proofs;

namespace Companion.Server.Settings;

/// <summary>The files of <c>configs/</c> that lie beside the program.</summary>
internal static class ShippedFiles
{
    /// <summary>The settings as they ship.</summary>
    public static string Settings => At("companion.json");

    /// <summary>The puzzle to begin with.</summary>
    public static string Demo => At("demo.json");

    /// <summary>The words for deductions.</summary>
    /// <exception cref="PlainException">The file is missing or was broken by a change.</exception>
    public static Wording Wording()
    {
        var path = At("phrases", "en.json");
        try
        {
            return new(Phrases.Parse(File.ReadAllText(path)));
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or FormatException)
        {
            throw new PlainException($"The phrases in {path} cannot be used: {fault.Message}", fault);
        }
    }

    private static string At(params ReadOnlySpan<string> names) => Path.Combine([AppContext.BaseDirectory, "configs", .. names]);
}
