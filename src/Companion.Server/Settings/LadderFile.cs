using Companion.Engine.Rules;
using Companion.Server.Data;

namespace Companion.Server.Settings;

/// <summary>The ladder: the presenter's own <c>ladder.json</c> in the data folder or, where there is none, the one that ships.</summary>
internal static class LadderFile
{
    /// <summary>Reads the ladder.</summary>
    /// <param name="folder">The data folder, which need not be there; null for none.</param>
    /// <exception cref="PlainException">The file cannot be read or used.</exception>
    public static Ladder Read(DataFolder? folder)
    {
        var path = folder is not null && File.Exists(folder.Ladder) ? folder.Ladder : ShippedFiles.Ladder;
        try
        {
            return Ladder.Parse(File.ReadAllText(path));
        }
        catch (FormatException fault)
        {
            throw new PlainException($"{fault.Message} Correct {path}.", fault);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            throw new PlainException($"The ladder in {path} cannot be read: {fault.Message}", fault);
        }
    }
}
