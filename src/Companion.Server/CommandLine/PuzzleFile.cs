namespace Companion.Server.CommandLine;

/// <summary>Puzzles as they lie in a file or come through a pipe.</summary>
internal static class PuzzleFile
{
    /// <summary>Says what a command takes that reads a file of puzzles.</summary>
    public const string Layout =
        "A puzzle a line, 81 characters, what follows a tab is left out; empty lines and lines that begin with # are skipped. "
        + "A hyphen reads what is piped in.";

    /// <summary>Opens a file.</summary>
    /// <param name="file">Its name, or a hyphen for what is piped in.</param>
    /// <exception cref="PlainException">It cannot be read.</exception>
    public static TextReader Open(string file)
    {
        if (file == "-")
            return Console.In;
        try
        {
            return File.OpenText(file);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            throw new PlainException($"The file {file} cannot be read: name one that is there, or - for what is piped in.", fault);
        }
    }

    /// <summary>The puzzles, a line each, with the number of the line from 1 on; read as they are asked for.</summary>
    /// <param name="reader">The open file.</param>
    public static IEnumerable<(int Line, string Text)> Lines(TextReader reader)
    {
        var number = 0;
        while (reader.ReadLine() is { } line)
        {
            number++;
            var text = line.Split('\t')[0];
            if (!string.IsNullOrWhiteSpace(text) && !text.StartsWith('#'))
                yield return (number, text);
        }
    }

    /// <summary>The puzzles of a file that holds either a puzzle a line or one grid of several lines.</summary>
    /// <param name="reader">The open file.</param>
    public static IReadOnlyList<(int Line, string Text)> Grids(TextReader reader)
    {
        var text = reader.ReadToEnd();
        var lines = Lines(new StringReader(text)).ToList();
        // A drawn row is at most some twenty characters wide.
        return lines.Count > 1 && lines.TrueForAll(line => line.Text.Length < Engine.Cell.Count / 2) ? [(1, text)] : lines;
    }
}
