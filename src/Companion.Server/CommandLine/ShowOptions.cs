using System.CommandLine;
using Companion.Server.Data;
using Companion.Server.Shows;

namespace Companion.Server.CommandLine;

/// <summary>What the commands about shows have in common.</summary>
internal static class ShowOptions
{
    /// <summary>Which show.</summary>
    public static Argument<string> Show() => new("show")
    {
        Description = "The show: its number as 'companion shows' lists it, 'latest', or a show file.",
    };

    /// <summary>Which show of those that are kept; a file has no place for what is corrected.</summary>
    public static Argument<string> Kept() => new("show")
    {
        Description = "The show: its number as 'companion shows' lists it, or 'latest'.",
    };

    /// <summary>Opens a show; what is missing of it is said on the error stream.</summary>
    public static OpenedShow Open(DataFolder folder, string name, TextWriter error)
    {
        var opened = new ShowLibrary(folder).Open(name);
        if (opened.Warning is { } warning)
            error.WriteLine(warning);
        return opened;
    }

    /// <summary>Whether a name that may be a show's or a file's is a show's: a number, 'latest', or a file that begins as show files do.</summary>
    /// <param name="name">The name.</param>
    public static bool IsShow(string name)
    {
        if (name == ShowLibrary.Latest || name.All(char.IsAsciiDigit))
            return true;
        if (!File.Exists(name))
            return false;
        try
        {
            using var file = File.OpenText(name);
            return file.Peek() == '{';
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            // Who reads it as puzzles says so.
            return false;
        }
    }
}
